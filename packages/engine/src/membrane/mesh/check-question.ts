import type { Fault } from '../../units/index.ts';
import { checkMeetings } from './check-meetings.ts';
import { checkRings, namedRings, touchOf } from './check-rings.ts';
import { angleFault, holeFault, limitFault, sizeFault } from './faults.ts';
import { LARGEST_MIN_ANGLE, type MeshQuestion, type Xy } from './mesh.ts';
import { boxAround, insideRing } from './segments.ts';

/** Memory of a mesh this large stays under 100 MB. */
const MOST_POINTS = 200_000;

/** Points nearer than this share of the box to an edge or corner are put on it: 0.01 mm on a metre. */
const SNAP = 1e-5;

export const snapOf = (q: MeshQuestion): number => SNAP * boxAround(q.outer.points).diagonal;

/** Everything that can be said before triangles are made; later checks need the earlier ones. */
export const checkQuestion = (q: MeshQuestion): readonly Fault[] => {
  const rings = [...checkSettings(q), ...checkRings(q)];
  if (rings.length > 0) return rings;
  const meetings = checkMeetings(namedRings(q), touchOf(q), snapOf(q));
  return meetings.length > 0 ? meetings : checkHoles(q);
};

const checkSettings = (q: MeshQuestion): Fault[] => {
  const faults: Fault[] = [];
  if (typeof q.size === 'number' && !(q.size > 0)) faults.push(sizeFault(`${q.size}`));
  if (!(q.minAngle >= 0 && q.minAngle <= LARGEST_MIN_ANGLE))
    faults.push(angleFault(q.minAngle, LARGEST_MIN_ANGLE));
  const least = [q.outer, ...q.holes, ...q.lines].reduce((sum, r) => sum + r.points.length, 0);
  const needed = Math.max(3, least + q.nodes.length);
  if (!(Number.isInteger(q.maxPoints) && q.maxPoints >= needed && q.maxPoints <= MOST_POINTS))
    faults.push(limitFault(q.maxPoints, needed, MOST_POINTS));
  return faults;
};

/** Rings are known not to meet, so that one point tells where a whole hole lies. */
const checkHoles = (q: MeshQuestion): Fault[] =>
  q.holes.flatMap((hole, i) => {
    const p = hole.points[0]!;
    if (!insideRing(p, q.outer.points))
      return [holeFault(`holes[${i}]`, 'The hole is outside the piece', p)];
    const around = q.holes.findIndex((other, j) => j !== i && insideRing(p, other.points));
    if (around < 0) return [];
    return [holeFault(`holes[${i}]`, `The hole is inside holes[${around}]`, p)];
  });

/** The place is on the piece and in none of its holes. */
export const onPiece = (q: MeshQuestion, p: Xy): boolean =>
  insideRing(p, q.outer.points) && !q.holes.some((hole) => insideRing(p, hole.points));
