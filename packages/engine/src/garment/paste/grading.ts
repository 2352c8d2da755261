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

/** Two points that a value is judged by: one on each side, or the two nearest on one. */
function neighbours(points: readonly Point[], index: number): [Point, Point] | null {
  const before = points.filter(([i]) => i < index);
  const after = points.filter(([i]) => i > index);
  const [left, right] = [before.at(-1), after[0]];
  if (left && right) return [left, right];
  const pair = left ? before.slice(-2) : after.slice(0, 2);
  return pair.length === 2 ? [pair[0]!, pair[1]!] : null;
}

const lineThrough = ([a, b]: [Point, Point], index: number): number =>
  a[1] + ((b[1] - a[1]) * (index - a[0])) / (b[0] - a[0]);

export function viewOf(
  values: readonly (number | null)[],
  index: number,
  trusted: (index: number) => boolean,
): GradingView | null {
  const value = values[index] ?? null;
  const points = values.flatMap((each, i): Point[] =>
    each === null || i === index || !trusted(i) ? [] : [[i, each]],
  );
  const pair = neighbours(points, index);
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
