/**
 * Does a value fit between its neighbours, going the way that the rest of the row goes? Graded sizes
 * go up (or down) from one to the next. Null where there are fewer than two others to compare with.
 */
export interface GradingView {
  readonly fits: boolean;
  /** Distance to the line through the nearest neighbours, in the unit of the values. */
  readonly off: number;
}

type Point = readonly [index: number, value: number];

type PointAt = (index: number) => Point | null;

/** The nearest point from a place on, up (1) or down (-1); null where there is none. */
function nearest(pointAt: PointAt, from: number, step: 1 | -1, length: number): Point | null {
  for (let i = from + step; i >= 0 && i < length; i += step) {
    const point = pointAt(i);
    if (point) return point;
  }
  return null;
}

/** Two points that a value is judged by, in order: one on each side, or the two nearest on one. */
function neighbours(pointAt: PointAt, index: number, length: number): [Point, Point] | null {
  const left = nearest(pointAt, index, -1, length);
  const right = nearest(pointAt, index, 1, length);
  if (left && right) return [left, right];
  const near = left ?? right;
  const far = near && nearest(pointAt, near[0], left ? -1 : 1, length);
  if (!near || !far) return null;
  return left ? [far, near] : [near, far];
}

const lineThrough = ([a, b]: [Point, Point], index: number): number =>
  a[1] + ((b[1] - a[1]) * (index - a[0])) / (b[0] - a[0]);

export function viewOf(
  values: readonly (number | null)[],
  index: number,
  trusted: (index: number) => boolean,
): GradingView | null {
  const value = values[index] ?? null;
  const pointAt: PointAt = (i) => {
    const each = values[i] ?? null;
    return each === null || !trusted(i) ? null : [i, each];
  };
  const pair = neighbours(pointAt, index, values.length);
  if (value === null || !pair) return null;
  const [a, b] = pair;
  const between = index > a[0] && index < b[0];
  const [least, most] = a[1] <= b[1] ? [a[1], b[1]] : [b[1], a[1]];
  const expected = lineThrough(pair, index);
  // Beyond the last neighbour a size may differ by up to twice the step between the two before it.
  const step = Math.abs(b[1] - a[1]) / Math.abs(b[0] - a[0]);
  const fits = between ? value >= least && value <= most : Math.abs(value - expected) <= step;
  return { fits, off: Math.abs(value - expected) };
}
