/**
 * Monotone piecewise-cubic interpolation (Fritsch and Carlson 1980, SIAM J. Numer. Anal. 17, 238):
 * through every point, without overshoot, once continuously differentiable; a straight line comes
 * back as a straight line.
 */
export interface Knot {
  readonly x: number;
  readonly y: number;
  /** Slope of the curve at the knot. */
  readonly slope: number;
}

/** Slopes from the secants, pulled back where they would leave the region of monotony. */
const limited = (left: number, right: number, leftWidth: number, rightWidth: number): number => {
  if (left * right <= 0) return 0;
  const a = 2 * rightWidth + leftWidth;
  const b = rightWidth + 2 * leftWidth;
  return (a + b) / (a / left + b / right);
};

/** One-sided slope at an end by the parabola through three points, held inside the region of monotony. */
const atEnd = (near: number, far: number, nearWidth: number, farWidth: number): number => {
  const slope = ((2 * nearWidth + farWidth) * near - nearWidth * far) / (nearWidth + farWidth);
  if (slope * near <= 0) return 0;
  return near * far <= 0 && Math.abs(slope) > 3 * Math.abs(near) ? 3 * near : slope;
};

/** Knots of the curve through points given by rising x; at least two, or a RangeError. */
export const monotoneKnots = (
  points: readonly { readonly x: number; readonly y: number }[],
): readonly Knot[] => {
  const widths = points.slice(1).map((p, i) => p.x - points[i]!.x);
  if (widths.length === 0 || widths.some((width) => !(width > 0)))
    throw new RangeError('a curve needs at least two points with rising x');
  const secants = widths.map((width, i) => (points[i + 1]!.y - points[i]!.y) / width);
  const last = widths.length - 1;
  const slopeAt = (i: number): number => {
    if (last === 0) return secants[0]!;
    if (i === 0) return atEnd(secants[0]!, secants[1]!, widths[0]!, widths[1]!);
    if (i > last)
      return atEnd(secants[last]!, secants[last - 1]!, widths[last]!, widths[last - 1]!);
    return limited(secants[i - 1]!, secants[i]!, widths[i - 1]!, widths[i]!);
  };
  return points.map(({ x, y }, i) => ({ x, y, slope: slopeAt(i) }));
};

const hermite = (from: Knot, to: Knot, x: number): number => {
  const width = to.x - from.x;
  const t = (x - from.x) / width;
  const s = 1 - t;
  return (
    s * s * ((1 + 2 * t) * from.y + t * width * from.slope) +
    t * t * ((1 + 2 * s) * to.y - s * width * to.slope)
  );
};

/** Value at x. Beyond the first or last knot the end tangent goes on. */
export const evaluate = (knots: readonly Knot[], x: number): number => {
  const first = knots[0]!;
  const last = knots[knots.length - 1]!;
  if (x <= first.x) return first.y + (x - first.x) * first.slope;
  if (x >= last.x) return last.y + (x - last.x) * last.slope;
  const next = knots.findIndex((knot) => knot.x > x);
  return hermite(knots[next - 1]!, knots[next]!, x);
};

/** Points of Gauss-Legendre of order two in the unit interval; exact for a cubic. */
const GAUSS = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)];

/** ∫ of the curve from `from` to `to` (from ≤ to), exact up to rounding, piece by piece. */
export const integral = (knots: readonly Knot[], from: number, to: number): number => {
  const inner = knots.map((knot) => knot.x).filter((x) => x > from && x < to);
  const ends = [from, ...inner, to];
  return ends.slice(1).reduce((sum, end, i) => {
    const width = end - ends[i]!;
    const mean = GAUSS.reduce((total, t) => total + evaluate(knots, ends[i]! + t * width), 0) / 2;
    return sum + width * mean;
  }, 0);
};
