import { EVALUATED, G1, G2, G3 } from './material.ts';
import { deformation, type Sheet, type SheetState } from './sheet.ts';

/** λ₁, λ₂ and γ (radians) of each triangle. */
export const readStretch = (sheet: Sheet, points: Float64Array): Float64Array => {
  const out = new Float64Array(3 * sheet.rest.count);
  const f = new Float64Array(4);
  for (let e = 0; e < sheet.rest.count; e++) {
    deformation(sheet, points, e, f);
    const [l1, l2] = [Math.hypot(f[0]!, f[1]!), Math.hypot(f[2]!, f[3]!)];
    const sine = (f[0]! * f[2]! + f[1]! * f[3]!) / (l1 * l2);
    out.set([l1, l2, Math.asin(Math.min(1, Math.max(-1, sine || 0)))], 3 * e);
  }
  return out;
};

/** S₁₁, S₂₂, S₁₂ of each triangle, N/mm. */
export const readStress = (sheet: Sheet, state: SheetState, points: Float64Array): Float64Array => {
  const out = new Float64Array(3 * sheet.rest.count);
  const [f, own] = [new Float64Array(4), new Float64Array(EVALUATED)];
  for (let e = 0; e < sheet.rest.count; e++) {
    deformation(sheet, points, e, f);
    const c11 = f[0]! * f[0]! + f[1]! * f[1]!;
    const c22 = f[2]! * f[2]! + f[3]! * f[3]!;
    const c12 = f[0]! * f[2]! + f[1]! * f[3]!;
    sheet.relaxations[sheet.materialOf[e]!]!.relax(c11, c22, c12, state.wrinkles, 2 * e, own);
    out.set([2 * own[G1]!, 2 * own[G2]!, own[G3]!], 3 * e);
  }
  return out;
};
