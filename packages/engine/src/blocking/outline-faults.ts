import type { Point } from '../garment/index.ts';
import type { Fault } from '../units/index.ts';
import { crossing } from './plane.ts';

export const fault = (
  code: string,
  field: string,
  given: unknown,
  problem: string,
  mend: string,
): Fault => ({ code: `block-${code}`, field, given: String(given), problem, mend });

/** Longest edge of a piece that is worked out, mm: a hundred metres is a mistake of units. */
export const LARGEST = 100_000;
export const finite = ({ x, y }: Point): boolean =>
  Number.isFinite(x) && Number.isFinite(y) && Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST;

/** What keeps a closed outline, mm, from being a piece: the first that is found. */
export const outlineFaults = (points: readonly Point[], field: string): Fault[] => {
  if (points.length < 3)
    return [
      fault('few-points', field, points.length, 'A piece needs at least 3 corners', 'Add points.'),
    ];
  const wrong = points.findIndex((p) => !finite(p));
  if (wrong >= 0)
    return [
      fault(
        'number',
        `${field}[${wrong}]`,
        JSON.stringify(points[wrong]),
        'This is no place in millimetres',
        'Give both coordinates in mm.',
      ),
    ];
  const still = points.findIndex((p, i) => {
    const q = points[(i + 1) % points.length]!;
    return Math.hypot(q.x - p.x, q.y - p.y) < 1e-6;
  });
  if (still >= 0)
    return [
      fault(
        'zero-edge',
        `${field}[${still}]`,
        `${points[still]!.x}, ${points[still]!.y}`,
        'The edge from here has no length',
        'Drop one of the two points that coincide.',
      ),
    ];
  if (onOneLine(points))
    return [
      fault('no-area', field, '', 'All points lie on one line', 'Move a point off the line.'),
    ];
  const crossed = crossing(points);
  return crossed === null
    ? []
    : [
        fault(
          'crossing',
          field,
          `edges ${crossed[0]} and ${crossed[1]}`,
          'The outline crosses or touches itself',
          'Move points until its edges are apart.',
        ),
      ];
};

/** A piece this much narrower than it is long is a line. */
const THIN = 1e-6;

const onOneLine = (points: readonly Point[]): boolean => {
  const [a] = points as [Point];
  const far = (p: Point) => Math.hypot(p.x - a.x, p.y - a.y);
  const b = points.reduce((best, p) => (far(p) > far(best) ? p : best), a);
  const size = far(b);
  return points.every(
    (p) => Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) <= THIN * size * size,
  );
};
