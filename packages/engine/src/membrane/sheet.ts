import type { Frames } from './frames.ts';
import type { RestTriangles } from './geometry.ts';
import { EVALUATED, evaluate, G1, G2, G3, H11, H12, H13, H22, H23, H33, W } from './material.ts';
import { type Relaxation, TAUT } from './relaxation.ts';
import type { Totals } from './totals.ts';
import { withoutNegative } from './two-by-two.ts';

/** Everything about the sheet but where its nodes are. */
export interface Sheet {
  readonly triangles: Uint32Array;
  readonly rest: RestTriangles;
  readonly materialOf: Uint16Array;
  /** One of each material. */
  relaxations: readonly Relaxation[];
  /** 21 positions a triangle in the values of the stiffness. */
  readonly map: Int32Array;
}

/** What each triangle remembers: its wrinkle (2 numbers) and whether it is taut, wrinkled or slack. */
export interface SheetState {
  readonly wrinkles: Float64Array;
  readonly branch: Uint8Array;
}

/** Columns of F, 4 numbers, of a triangle when its nodes are at `points`. */
export const deformation = (
  { triangles, rest }: Sheet,
  points: Float64Array,
  e: number,
  f: Float64Array,
): void => {
  const { slopes } = rest;
  let [ax, ay, bx, by] = [0, 0, 0, 0];
  for (let k = 0; k < 3; k++) {
    const node = 2 * triangles[3 * e + k]!;
    const x = points[node]!;
    const y = points[node + 1]!;
    const s1 = slopes[6 * e + 2 * k]!;
    const s2 = slopes[6 * e + 2 * k + 1]!;
    ax += x * s1;
    ay += y * s1;
    bx += x * s2;
    by += y * s2;
  }
  f[0] = ax;
  f[1] = ay;
  f[2] = bx;
  f[3] = by;
};

/**
 * Energy and forces only; with the stiffness; with the stiffness without the part that compression takes
 * away, which is never negative; or with the stiffness that the sheet would have were it taut everywhere,
 * which foretells large moves from a slack start better than its own.
 */
export type Wanted = 'forces' | 'stiffness' | 'safe-stiffness' | 'taut-stiffness';

/** Adds the sheet to the totals. Energy becomes Infinity where a material line is at its limit. */
export class SheetAssembly {
  private readonly sheet: Sheet;
  private readonly f = new Float64Array(4);
  private readonly own = new Float64Array(EVALUATED);
  private readonly packed = new Float64Array(21);
  /** Rows of ∂C/∂x: six unknowns of C₁₁, then of C₂₂, of C₁₂; and the same times ∂²W/∂C². */
  private readonly b = new Float64Array(18);
  private readonly hb = new Float64Array(18);

  constructor(sheet: Sheet) {
    this.sheet = sheet;
  }

  add(
    points: Float64Array,
    state: SheetState,
    frames: Frames,
    wanted: Wanted,
    totals: Totals,
  ): void {
    const { sheet, f, own } = this;
    for (let e = 0; e < sheet.rest.count; e++) {
      deformation(sheet, points, e, f);
      const relaxation = sheet.relaxations[sheet.materialOf[e]!]!;
      const c11 = f[0]! * f[0]! + f[1]! * f[1]!;
      const c22 = f[2]! * f[2]! + f[3]! * f[3]!;
      const c12 = f[0]! * f[2]! + f[1]! * f[3]!;
      const branch = relaxation.relax(c11, c22, c12, state.wrinkles, 2 * e, own);
      state.branch[e] = branch;
      totals.energy += sheet.rest.area[e]! * own[W]!;
      if (own[W] === Number.POSITIVE_INFINITY) return;
      this.addForces(e, totals.forces);
      if (wanted === 'forces') continue;
      if (wanted !== 'stiffness' && branch !== TAUT) withoutCompression(own);
      if (wanted === 'taut-stiffness' && branch !== TAUT) tautStiffness(relaxation, c11, c22, own);
      this.addStiffness(e, frames, totals.stiffness);
    }
  }

  private addForces(e: number, forces: Float64Array): void {
    const { sheet, f, own } = this;
    const area = sheet.rest.area[e]!;
    const s11 = 2 * own[G1]! * area;
    const s22 = 2 * own[G2]! * area;
    const s12 = own[G3]! * area;
    for (let k = 0; k < 3; k++) {
      const node = 2 * sheet.triangles[3 * e + k]!;
      const b1 = sheet.rest.slopes[6 * e + 2 * k]!;
      const b2 = sheet.rest.slopes[6 * e + 2 * k + 1]!;
      const along1 = s11 * b1 + s12 * b2;
      const along2 = s12 * b1 + s22 * b2;
      forces[node]! += along1 * f[0]! + along2 * f[2]!;
      forces[node + 1]! += along1 * f[1]! + along2 * f[3]!;
    }
  }

  private addStiffness(e: number, frames: Frames, values: Float64Array): void {
    const { sheet, packed } = this;
    this.fillRows(e);
    this.fillPacked(e);
    const i = sheet.triangles[3 * e]!;
    const j = sheet.triangles[3 * e + 1]!;
    const k = sheet.triangles[3 * e + 2]!;
    if (frames.turned[i]! + frames.turned[j]! + frames.turned[k]! > 0)
      frames.turnElement(packed, [i, j, k]);
    const from = 21 * e;
    for (let p = 0; p < 21; p++) values[sheet.map[from + p]!]! += packed[p]!;
  }

  private fillRows(e: number): void {
    const { f, b, hb } = this;
    const { slopes } = this.sheet.rest;
    const h11 = this.own[H11]!;
    const h22 = this.own[H22]!;
    const h33 = this.own[H33]!;
    const h12 = this.own[H12]!;
    const h13 = this.own[H13]!;
    const h23 = this.own[H23]!;
    for (let c = 0; c < 6; c++) {
      const b1 = slopes[6 * e + (c & 6)]!;
      const b2 = slopes[6 * e + (c & 6) + 1]!;
      const f1 = f[c & 1]!;
      const f2 = f[2 + (c & 1)]!;
      const r1 = 2 * b1 * f1;
      const r2 = 2 * b2 * f2;
      const r3 = b2 * f1 + b1 * f2;
      b[c] = r1;
      b[6 + c] = r2;
      b[12 + c] = r3;
      hb[c] = h11 * r1 + h12 * r2 + h13 * r3;
      hb[6 + c] = h12 * r1 + h22 * r2 + h23 * r3;
      hb[12 + c] = h13 * r1 + h23 * r2 + h33 * r3;
    }
  }

  private fillPacked(e: number): void {
    const { own, b, hb, packed } = this;
    const { slopes } = this.sheet.rest;
    const a = this.sheet.rest.area[e]!;
    const s11 = 2 * own[G1]!;
    const s22 = 2 * own[G2]!;
    const s12 = own[G3]!;
    let p = 0;
    for (let r = 0; r < 6; r++) {
      const at = 6 * e + (r & 6);
      const along1 = s11 * slopes[at]! + s12 * slopes[at + 1]!;
      const along2 = s12 * slopes[at]! + s22 * slopes[at + 1]!;
      const b1 = b[r]!;
      const b2 = b[6 + r]!;
      const b3 = b[12 + r]!;
      for (let c = r; c < 6; c++) {
        const to = 6 * e + (c & 6);
        // Stress turns x into x and y into y only.
        const turned = ((r ^ c) & 1) === 0 ? along1 * slopes[to]! + along2 * slopes[to + 1]! : 0;
        packed[p++] = a * (b1 * hb[c]! + b2 * hb[6 + c]! + b3 * hb[12 + c]! + turned);
      }
    }
  }
}

/** Second derivatives of the unrelaxed energy near rest, for a triangle that is not taut. */
const tautStiffness = (
  { material }: Relaxation,
  c11: number,
  c22: number,
  out: Float64Array,
): void => {
  const [g1, g2, g3] = [out[G1]!, out[G2]!, out[G3]!];
  evaluate(material, Math.max(1, c11), Math.max(1, c22), 0, out);
  const [h11, h22, h12] = withoutNegative(out[H11]!, out[H22]!, out[H12]!);
  out.set([g1, g2, g3, h11, h22, out[H33]!, h12, 0, 0], G1);
};

/** Leaves the pulling part of stress, for its share in the stiffness. */
const withoutCompression = (out: Float64Array): void => {
  const [s11, s22, s12] = withoutNegative(2 * out[G1]!, 2 * out[G2]!, out[G3]!);
  out.set([s11 / 2, s22 / 2, s12], G1);
};
