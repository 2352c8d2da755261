import { deformation, type Sheet } from './sheet.ts';

/** Smallest s > 0 with a + b s + c s² = 0 for a > 0; Infinity where there is none. */
const firstRoot = (a: number, b: number, c: number): number => {
  const inside = b * b - 4 * a * c;
  if (inside < 0) return Number.POSITIVE_INFINITY;
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  const roots = [q / c, a / q].filter((s) => s > 0);
  return Math.min(Number.POSITIVE_INFINITY, ...roots);
};

/** How much of `step` can be taken before a triangle that lies face up turns over; may exceed 1. */
const shareBeforeFold = (sheet: Sheet, points: Float64Array, step: Float64Array): number => {
  const [f, d] = [new Float64Array(4), new Float64Array(4)];
  let most = Number.POSITIVE_INFINITY;
  for (let e = 0; e < sheet.rest.count; e++) {
    deformation(sheet, points, e, f);
    deformation(sheet, step, e, d);
    const now = f[0]! * f[3]! - f[1]! * f[2]!;
    const slope = f[0]! * d[3]! + d[0]! * f[3]! - f[1]! * d[2]! - d[1]! * f[2]!;
    const bend = d[0]! * d[3]! - d[1]! * d[2]!;
    // Cheap: neither term can bring it to 0 within the step.
    if (now <= 0 || now + Math.min(0, slope) + Math.min(0, bend) > 0) continue;
    most = Math.min(most, firstRoot(now, slope, bend));
  }
  return most;
};

/** Triangles that lie face down. */
export const turnedOver = (sheet: Sheet, points: Float64Array): number => {
  const f = new Float64Array(4);
  let count = 0;
  for (let e = 0; e < sheet.rest.count; e++) {
    deformation(sheet, points, e, f);
    if (f[0]! * f[3]! - f[1]! * f[2]! < 0) count++;
  }
  return count;
};

/**
 * A step goes no further than this share of the way to where a triangle turns over, which costs hardly any
 * energy where the sheet is slack but is not how it lies; unless it is on its edge already, as where nodes
 * are carried past each other.
 */
const SHY_OF_FOLD = 0.9;
const LEAST_BEFORE_FOLD = 0.05;

/** The share of `step` that turns no triangle over, short of it; 1 where one is on its edge already. */
export const shareShyOfFold = (sheet: Sheet, points: Float64Array, step: Float64Array): number => {
  const share = SHY_OF_FOLD * shareBeforeFold(sheet, points, step);
  return share > LEAST_BEFORE_FOLD ? Math.min(1, share) : 1;
};
