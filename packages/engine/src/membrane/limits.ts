import { between, type CordLines } from './cords.ts';
import { deformation, type Sheet, type SheetState } from './sheet.ts';

/** Where the sheet or a cord comes closest to its limit. */
export interface Worst {
  /** Strain as a share of its limit, 0 or more; 0 where nothing has a limit. */
  use: number;
  /** Triangle and material line, or cord; -1 where it is not one. */
  triangle: number;
  line: 1 | 2;
  cord: number;
}

const useOf = (squared: number, limit: number): number =>
  Math.max(0, Math.sqrt(squared) - 1) / limit;

/** Strain along each material line as a share of its limit, hidden wrinkles straightened: 2 a triangle. */
export const limitUse = (sheet: Sheet, state: SheetState, points: Float64Array): Float64Array => {
  const use = new Float64Array(2 * sheet.rest.count);
  const f = new Float64Array(4);
  for (let e = 0; e < sheet.rest.count; e++) {
    const { along1, along2 } = sheet.relaxations[sheet.materialOf[e]!]!.material;
    const [z1, z2] = [state.wrinkles[2 * e]!, state.wrinkles[2 * e + 1]!];
    deformation(sheet, points, e, f);
    use[2 * e] = useOf(f[0]! ** 2 + f[1]! ** 2 + z1 * z1, along1.limit);
    use[2 * e + 1] = useOf(f[2]! ** 2 + f[3]! ** 2 + z2 * z2, along2.limit);
  }
  return use;
};

export const cordUse = (cords: CordLines, points: Float64Array): Float64Array =>
  Float64Array.from(cords.laws, (law, k) => {
    const now = Math.hypot(...between(points, cords.nodes[2 * k]!, cords.nodes[2 * k + 1]!));
    return useOf((now / cords.length[k]!) ** 2, law.limit);
  });

/** The place of most use; `counts` may leave some out. */
const most = (
  sheetUse: Float64Array,
  cordsUse: Float64Array,
  counts: (use: number, k: number, cord: boolean) => boolean,
): Worst => {
  const worst: Worst = { use: 0, triangle: -1, line: 1, cord: -1 };
  sheetUse.forEach((use, k) => {
    if (use > worst.use && counts(use, k, false))
      Object.assign(worst, { use, triangle: k >> 1, line: (k & 1) + 1 });
  });
  cordsUse.forEach((use, k) => {
    if (use > worst.use && counts(use, k, true))
      Object.assign(worst, { use, triangle: -1, cord: k });
  });
  return worst;
};

export const worstUse = (
  sheet: Sheet,
  cords: CordLines,
  state: SheetState,
  points: Float64Array,
): Worst => most(limitUse(sheet, state, points), cordUse(cords, points), () => true);

/** Of the places that `step` stretches, the one stretched most after that. */
export const worstAfter = (
  sheet: Sheet,
  cords: CordLines,
  state: SheetState,
  points: Float64Array,
  step: Float64Array,
): Worst => {
  const [sheetNow, cordsNow] = [limitUse(sheet, state, points), cordUse(cords, points)];
  const after = points.map((x, k) => x + step[k]!);
  return most(
    limitUse(sheet, state, after),
    cordUse(cords, after),
    (use, k, cord) => use > (cord ? cordsNow[k]! : sheetNow[k]!),
  );
};

/** Slope of the squared length of the worst line by the places of the nodes. */
export const worstSlope = (
  sheet: Sheet,
  cords: CordLines,
  points: Float64Array,
  { triangle, line, cord }: Worst,
): Float64Array => {
  const slope = new Float64Array(points.length);
  if (cord >= 0) {
    const [i, j] = [cords.nodes[2 * cord]!, cords.nodes[2 * cord + 1]!];
    between(points, i, j).forEach((d, axis) => {
      slope[2 * i + axis] = -2 * d;
      slope[2 * j + axis] = 2 * d;
    });
  } else if (triangle >= 0) {
    const f = new Float64Array(4);
    deformation(sheet, points, triangle, f);
    for (let k = 0; k < 3; k++)
      for (const axis of [0, 1] as const)
        slope[2 * sheet.triangles[3 * triangle + k]! + axis] =
          2 * f[2 * (line - 1) + axis]! * sheet.rest.slopes[6 * triangle + 2 * k + line - 1]!;
  }
  return slope;
};

/** Largest s with |u + s v| ≤ end, for |u| ≤ end. */
const shareUpTo = (ux: number, uy: number, vx: number, vy: number, end: number): number => {
  const [a, b, c] = [vx * vx + vy * vy, ux * vx + uy * vy, ux * ux + uy * uy - end * end];
  if (a === 0 || end === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(Math.max(0, b * b - a * c));
  // The form without cancellation.
  return b > 0 ? -c / (b + root) : (root - b) / a;
};

/** How much of `step` can be taken before a line of the sheet or a cord is at its limit; may exceed 1. */
export const shareBeforeLimit = (
  sheet: Sheet,
  cords: CordLines,
  points: Float64Array,
  step: Float64Array,
): number => {
  const [f, d] = [new Float64Array(4), new Float64Array(4)];
  let most = Number.POSITIVE_INFINITY;
  for (let e = 0; e < sheet.rest.count; e++) {
    const { along1, along2 } = sheet.relaxations[sheet.materialOf[e]!]!.material;
    deformation(sheet, points, e, f);
    deformation(sheet, step, e, d);
    most = Math.min(
      most,
      shareUpTo(f[0]!, f[1]!, d[0]!, d[1]!, 1 + along1.limit),
      shareUpTo(f[2]!, f[3]!, d[2]!, d[3]!, 1 + along2.limit),
    );
  }
  cords.laws.forEach((law, k) => {
    const [i, j] = [cords.nodes[2 * k]!, cords.nodes[2 * k + 1]!];
    const end = cords.length[k]! * (1 + law.limit);
    most = Math.min(most, shareUpTo(...between(points, i, j), ...between(step, i, j), end));
  });
  return most;
};
