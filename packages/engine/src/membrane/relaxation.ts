import {
  EVALUATED,
  evaluate,
  G1,
  G2,
  G3,
  H11,
  H12,
  H22,
  H33,
  type Material,
  stiffnessScale,
  W,
} from './material.ts';
import { clampConvex, curvature, softenAcross, softenAll } from './relaxed-stiffness.ts';
import { eigen, lowest, solveSymmetric, type Two } from './two-by-two.ts';

/**
 * No compression: a sheet that is squeezed wrinkles instead (tension field theory; Pipkin 1986, IMA J.
 * Appl. Math. 36, 85). The energy of the stretch C that is seen is the least one that C with hidden
 * wrinkles Z ⪰ 0 can have,
 *
 *   W_r(C) = min over Z ⪰ 0 of W(C + Z) + ⅛ρ |Z|²,   ρ = RESIDUAL_SHARE · √(Y₁Y₂),
 *
 * where the second term is what wrinkles still resist, the more of them there are. Then
 * - taut, Z = 0: no principal stress is below 0, and energy and stress are exactly those of W;
 * - wrinkled, Z = z zᵀ: stress −½ρ|z|² across the wrinkles (C + Z, pulled along, has narrowed freely);
 * - slack, Z of two directions: stress −½ρZ.
 * No principal stress is below −½ρ|z|², and |z| is the width hidden as a share of that at rest. But for this ρ energy grows with C, so that, where W is convex in C,
 * it is convex in the places of the nodes: equilibrium has one energy and Newton's method finds it. Every
 * stretch has a stiffness of the order of ρ or more, so that it can be factorised when wholly slack.
 */
export const RELAXED = ['taut', 'wrinkled', 'slack'] as const;
export const [TAUT, WRINKLED, SLACK] = [0, 1, 2] as const;
export type Branch = typeof TAUT | typeof WRINKLED | typeof SLACK;

/**
 * ρ as a share of √(Y₁Y₂): wrinkles as high as the sheet is wide push by half of this. Of the order of
 * 0.02 N over a metre of edge, far below what a mat's friction or any pin holds.
 */
export const RESIDUAL_SHARE = 1e-4;
/** Larger shares to pass through where Newton's method is slow to find which places are slack. */
export const EASIER_SHARES = [1e-2, 1e-3] as const;

export interface Relaxation {
  readonly material: Material;
  /** ρ, N/mm. */
  readonly resistance: number;
  /**
   * Relaxed energy and derivatives at (C₁₁, C₂₂, C₁₂) into `out`, laid out as in material.ts, the second
   * ones with directions of negative curvature (only a W that is not convex has them) left out.
   * `z[at]`, `z[at + 1]` is the wrinkle to start from and the one found; zeros where there is none.
   * W is Infinity where the stretch along a material line is at its limit.
   */
  readonly relax: (
    c11: number,
    c22: number,
    c12: number,
    z: Float64Array,
    at: number,
    out: Float64Array,
  ) => Branch;
}

/** Stops when the slope by z is this share of its own slope: rounding of a few products. */
const CLOSE = 1e-13;
const MOST_STEPS = 40;
/**
 * Rounding of an energy as a share of it and of its slopes: its terms are some ten times as large as their
 * sum where a soft direction is squeezed and a stiff one pulled, and C is rounded before it.
 */
const ROUNDING = 1e-14;
/** A step within it must halve the slope along itself. */
const FLATTER = 0.5;
/** Newton steps for the slack state, whose error falls by ρ/Y each time, and where they end: rounding. */
const SLACK_STEPS = 8;
const SLACK_CLOSE = 1e-11;
/** Stress across all that is left may be this share of the scale below 0: what the stop above leaves. */
const PULLS = 1e-9;

/** C₁₁, C₂₂, C₁₂. */
type C = readonly [number, number, number];

export const relaxation = (material: Material, share: number = RESIDUAL_SHARE): Relaxation => {
  const scale = stiffnessScale(material);
  const resistance = share * scale;
  const own = new Float64Array(EVALUATED);
  const trial = new Float64Array(EVALUATED);
  const pair = { a: 0, b: 0 };
  const slopes = new Float64Array(2);
  const bends = new Float64Array(3);
  const step = new Float64Array(2);

  const isTaut = (out: Float64Array): boolean =>
    out[G1]! >= 0 && out[G2]! >= 0 && 4 * out[G1]! * out[G2]! >= out[G3]! * out[G3]!;

  /** W(C + z zᵀ) + ⅛ρ|z|⁴. */
  const wrinkledEnergy = (c: C, z1: number, z2: number, out: Float64Array): number => {
    evaluate(material, c[0] + z1 * z1, c[1] + z2 * z2, c[2] + z1 * z2, out);
    out[W]! += (resistance / 8) * (z1 * z1 + z2 * z2) ** 2;
    return out[W]!;
  };

  /** Puts z into pair and the energy there into `own`; false where it is not finite. */
  const startFrom = (c: C, [z1, z2]: Two): boolean => {
    pair.a = z1;
    pair.b = z2;
    return wrinkledEnergy(c, z1, z2, own) < Number.POSITIVE_INFINITY;
  };

  const direction = (angle: number, amount: number): Two => [
    amount * Math.cos(angle),
    amount * Math.sin(angle),
  ];

  /** Across the least stress, as far as the energy along it, which is convex in |z|², would fall. */
  const acrossStress = (c: C): Two[] => {
    if (!(wrinkledEnergy(c, 0, 0, own) < Number.POSITIVE_INFINITY)) return [];
    const { cos, sin } = eigen(2 * own[G1]!, 2 * own[G2]!, own[G3]!);
    const [n1, n2] = [-sin, cos];
    const [q1, q2, q3] = [n1 * n1, n2 * n2, n1 * n2];
    const slope = own[G1]! * q1 + own[G2]! * q2 + own[G3]! * q3;
    const bend =
      own[H11]! * q1 * q1 +
      own[H22]! * q2 * q2 +
      own[H33]! * q3 * q3 +
      2 * own[H12]! * q1 * q2 +
      resistance / 4;
    const amount = bend > 0 && slope < 0 ? Math.sqrt(-slope / bend) : 0.1;
    return [1, 0.5, 0.25, 0.05].map((share) => [share * amount * n1, share * amount * n2]);
  };

  /** Fills the least stretched direction up to rest, or one material line alone. */
  const filled = (c: C): Two[] => {
    const [d11, d22] = [c[0] - 1, c[1] - 1];
    const least = (d11 + d22) / 2 - Math.hypot((d11 - d22) / 2, c[2]);
    const angle = Math.atan2(2 * c[2], d11 - d22) / 2 + Math.PI / 2;
    const amount = Math.sqrt(Math.max(0, -least));
    return [
      direction(angle, amount),
      direction(angle, amount / 2),
      [Math.sqrt(Math.max(0, -d11)), 0],
      [0, Math.sqrt(Math.max(0, -d22))],
    ];
  };

  /** The wrinkle from a start, left in pair and `own`: true where it is the one of least energy. */
  const found = (c: C, start: Two): boolean =>
    (start[0] !== 0 || start[1] !== 0) &&
    startFrom(c, start) &&
    wrinkle(c) &&
    leastWithResistance() >= -PULLS * (scale + own[G1]! + own[G2]!);

  /** Least eigenvalue of S + ½ρZ, which is 0 or more where Z is the best. */
  const leastWithResistance = (): number => {
    const [half, z1, z2] = [resistance / 2, pair.a, pair.b];
    return lowest(
      2 * own[G1]! + half * z1 * z1,
      2 * own[G2]! + half * z2 * z2,
      own[G3]! + half * z1 * z2,
    );
  };

  /** Slope by z of the energy last put into `out`, into `slopes`. */
  const slopeAt = (out: Float64Array, z1: number, z2: number): void => {
    const push = (resistance / 2) * (z1 * z1 + z2 * z2);
    slopes[0] = (2 * out[G1]! + push) * z1 + out[G3]! * z2;
    slopes[1] = out[G3]! * z1 + (2 * out[G2]! + push) * z2;
  };

  /** Damped Newton for z, from pair and `own`; true where it converged. */
  const wrinkle = (c: C): boolean => {
    for (let steps = 0; steps < MOST_STEPS; steps++) {
      slopeAt(own, pair.a, pair.b);
      const g1 = slopes[0]!;
      const g2 = slopes[1]!;
      curvature(own, pair.a, pair.b, resistance, bends);
      const m11 = bends[0]!;
      const m22 = bends[1]!;
      const m12 = bends[2]!;
      const close = CLOSE * (scale + Math.abs(m11) + Math.abs(m22));
      if (Math.abs(g1) + Math.abs(g2) <= close) return true;
      solveSymmetric(m11, m22, m12, -g1, -g2, step);
      const s1 = step[0]!;
      const s2 = step[1]!;
      const slope = g1 * s1 + g2 * s2;
      if (!lineSearch(c, s1, s2, slope)) return Math.abs(g1) + Math.abs(g2) <= 100 * close;
    }
    return false;
  };

  /** Falls of energy below its rounding tell nothing: there the slope must fall instead. */
  const lineSearch = (c: C, s1: number, s2: number, slope: number): boolean => {
    const energy = own[W]!;
    const stress = Math.abs(own[G1]!) + Math.abs(own[G2]!);
    const rounding = ROUNDING * (Math.abs(energy) + scale + stress);
    for (let share = 1; share > 1e-5; share /= 2) {
      const z1 = pair.a + share * s1;
      const z2 = pair.b + share * s2;
      const now = wrinkledEnergy(c, z1, z2, trial);
      if (!(now <= energy + rounding)) continue;
      if (!(now <= energy + 1e-4 * share * slope)) {
        slopeAt(trial, z1, z2);
        const left = slopes[0]! * s1 + slopes[1]! * s2;
        if (!(Math.abs(left) <= FLATTER * Math.abs(slope))) continue;
      }
      own.set(trial);
      pair.a = z1;
      pair.b = z2;
      return true;
    }
    return false;
  };

  /**
   * Slack, if the best Z of all, S(C + Z) = −½ρZ, is one of wrinkles: Newton for C + Z from rest, which
   * ρ hardly moves. Leaves energy and derivatives in `out`; false where it is not slack.
   */
  const slacken = (c: C, out: Float64Array): boolean => {
    if (lowest(1 - c[0], 1 - c[1], -c[2]) < -2 * share) return false;
    let [x11, x22, x12] = [1, 1, 0];
    for (let steps = 0; steps < SLACK_STEPS; steps++) {
      evaluate(material, x11, x22, x12, out);
      const r1 = out[G1]! + (resistance / 4) * (x11 - c[0]);
      const r2 = out[G2]! + (resistance / 4) * (x22 - c[1]);
      const r3 = out[G3]! + (resistance / 2) * (x12 - c[2]);
      if (Math.abs(r1) + Math.abs(r2) + Math.abs(r3) <= SLACK_CLOSE * resistance) break;
      const [h11, h22] = [out[H11]! + resistance / 4, out[H22]! + resistance / 4];
      solveSymmetric(h11, h22, out[H12]!, -r1, -r2, step);
      x11 += step[0]!;
      x22 += step[1]!;
      x12 -= r3 / (out[H33]! + resistance / 2);
    }
    const [z11, z22, z12] = [x11 - c[0], x22 - c[1], x12 - c[2]];
    if (!(z11 >= 0 && z22 >= 0 && z11 * z22 >= z12 * z12)) return false;
    evaluate(material, x11, x22, x12, out);
    out[W]! += (resistance / 8) * (z11 * z11 + z22 * z22 + 2 * z12 * z12);
    softenAll(out, resistance);
    return true;
  };

  const wrinkles = (c: C, z: Float64Array, at: number, out: Float64Array): void => {
    const cold = (start: Two) => found(c, start);
    if (!(cold([z[at]!, z[at + 1]!]) || acrossStress(c).some(cold) || filled(c).some(cold))) {
      out[W] = Number.POSITIVE_INFINITY;
      return;
    }
    z[at] = pair.a;
    z[at + 1] = pair.b;
    out.set(own);
    softenAcross(out, pair.a, pair.b, resistance);
  };

  const relax: Relaxation['relax'] = (c11, c22, c12, z, at, out) => {
    if (c11 >= (1 + material.along1.limit) ** 2 || c22 >= (1 + material.along2.limit) ** 2) {
      out[W] = Number.POSITIVE_INFINITY;
      return TAUT;
    }
    evaluate(material, c11, c22, c12, out);
    if (out[W]! < Number.POSITIVE_INFINITY && isTaut(out)) {
      clampConvex(out);
      z[at] = z[at + 1] = 0;
      return TAUT;
    }
    const c: C = [c11, c22, c12];
    if (slacken(c, out)) {
      z[at] = z[at + 1] = 0;
      return SLACK;
    }
    wrinkles(c, z, at, out);
    return WRINKLED;
  };
  return { material, resistance, relax };
};
