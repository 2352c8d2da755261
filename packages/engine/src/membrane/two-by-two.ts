export type Two = readonly [number, number];

/** Eigenvalues below this share of the largest count as it: the step stays finite. */
const LEAST_SHARE = 1e-14;

/**
 * A⁻¹b for a symmetric positive definite 2 × 2 matrix, into the first two of `out`: asked for in every
 * triangle, it leaves nothing behind to be collected. A matrix that is not positive definite is taken by the
 * absolute values of its eigenvalues, so that −A⁻¹b still leads downhill.
 */
export const solveSymmetric = (
  a11: number,
  a22: number,
  a12: number,
  b1: number,
  b2: number,
  out: Float64Array,
): void => {
  const determinant = a11 * a22 - a12 * a12;
  if (a11 > 0 && determinant > LEAST_SHARE * (a11 + a22) ** 2) {
    out[0] = (a22 * b1 - a12 * b2) / determinant;
    out[1] = (a11 * b2 - a12 * b1) / determinant;
    return;
  }
  const { high, low, cos, sin } = eigen(a11, a22, a12);
  const least = LEAST_SHARE * Math.max(Math.abs(high), Math.abs(low)) || 1;
  const along = (cos * b1 + sin * b2) / Math.max(Math.abs(high), least);
  const across = (cos * b2 - sin * b1) / Math.max(Math.abs(low), least);
  out[0] = cos * along - sin * across;
  out[1] = sin * along + cos * across;
};

/** The lower eigenvalue. */
export const lowest = (a11: number, a22: number, a12: number): number => {
  const half = (a11 - a22) / 2;
  return (a11 + a22) / 2 - Math.sqrt(half * half + a12 * a12);
};

/** Eigenvalues, and the direction of the higher one. */
export const eigen = (a11: number, a22: number, a12: number) => {
  const middle = (a11 + a22) / 2;
  const half = Math.hypot((a11 - a22) / 2, a12);
  const angle = Math.atan2(2 * a12, a11 - a22) / 2;
  return { high: middle + half, low: middle - half, cos: Math.cos(angle), sin: Math.sin(angle) };
};

/** The nearest symmetric matrix without negative eigenvalues, as [a11, a22, a12]. */
export const withoutNegative = (
  a11: number,
  a22: number,
  a12: number,
): readonly [number, number, number] => {
  if (a11 >= 0 && a22 >= 0 && a11 * a22 >= a12 * a12) return [a11, a22, a12];
  const { high, low, cos, sin } = eigen(a11, a22, a12);
  const [h, l] = [Math.max(0, high), Math.max(0, low)];
  return [h * cos * cos + l * sin * sin, h * sin * sin + l * cos * cos, (h - l) * cos * sin];
};
