import type { Fault } from '../../units/index.ts';
import { areaFault, numberFault, tagsFault, tooFewFault, zeroEdgeFault } from './faults.ts';
import type { MeshQuestion, OutlineRing, Xy } from './mesh.ts';
import { boxAround, distanceOf, distanceToLine } from './segments.ts';

/** A ring or line with the name that faults give it. */
export interface Named {
  readonly field: string;
  readonly ring: OutlineRing;
  readonly closed: boolean;
}

export const namedRings = (q: MeshQuestion): Named[] => [
  { field: 'outer', ring: q.outer, closed: true },
  ...q.holes.map((ring, i) => ({ field: `holes[${i}]`, ring, closed: true })),
  ...q.lines.map((ring, i) => ({ field: `lines[${i}]`, ring, closed: false })),
];

export const edgeCount = ({ ring, closed }: Named): number => ring.points.length - (closed ? 0 : 1);

export const endsOf = ({ ring }: Named, edge: number): readonly [Xy, Xy] => [
  ring.points[edge]!,
  ring.points[(edge + 1) % ring.points.length]!,
];

/** Nearer than this share of the box, points coincide and edges touch: 0.0001 mm on one metre. */
export const TOUCH = 1e-7;

export const touchOf = (q: MeshQuestion): number => TOUCH * boxAround(q.outer.points).diagonal;

/** Counts, tags and numbers; then lengths and areas of what is whole so far. */
export const checkRings = (q: MeshQuestion): Fault[] => {
  const rings = namedRings(q);
  const faults = [...rings.flatMap(checkNumbers), ...checkPoints('nodes', q.nodes)];
  if (faults.length > 0) return faults;
  const touch = touchOf(q);
  return rings.flatMap((named) => checkShape(named, touch));
};

const checkNumbers = (named: Named): Fault[] => {
  const { field, ring, closed } = named;
  const least = closed ? 3 : 2;
  const count = ring.points.length;
  if (count < least) return [tooFewFault(`${field}.points`, count, least)];
  const wanted = edgeCount(named);
  const integers = ring.tags.every((t) => Number.isInteger(t) && Math.abs(t) < 2 ** 31);
  const tags =
    integers && ring.tags.length === wanted
      ? []
      : [tagsFault(`${field}.tags`, integers ? `${ring.tags.length}` : `${ring.tags}`, wanted)];
  return [...tags, ...checkPoints(`${field}.points`, ring.points)];
};

const checkPoints = (field: string, points: readonly Xy[]): Fault[] =>
  points.flatMap((p, i) =>
    p.length === 2 && p.every(Number.isFinite) ? [] : [numberFault(`${field}[${i}]`, `${p}`)],
  );

const checkShape = (named: Named, touch: number): Fault[] => {
  const { field, ring, closed } = named;
  const zero: Fault[] = [];
  for (let i = 0; i < edgeCount(named); i++) {
    const [a, b] = endsOf(named, i);
    if (distanceOf(a, b) <= touch) zero.push(zeroEdgeFault(`${field}.points`, i, a));
  }
  if (zero.length > 0) return zero;
  return closed && isFlat(ring.points, touch) ? [areaFault(`${field}.points`)] : [];
};

/** All points lie on one line, within `touch`. */
const isFlat = (points: readonly Xy[], touch: number): boolean => {
  const a = points[0]!;
  const b = points.reduce((far, p) => (distanceOf(a, p) > distanceOf(a, far) ? p : far), a);
  return points.every((p) => distanceToLine(a, b, p) <= touch);
};
