import type { Fault } from '../../units/index.ts';
import { edgeCount, endsOf, type Named } from './check-rings.ts';
import { holeFault, meetingFault } from './faults.ts';
import type { Xy } from './mesh.ts';
import { crosses, crossing, distanceOf, distanceToSegment } from './segments.ts';

interface Edge {
  readonly named: Named;
  readonly index: number;
  readonly a: Xy;
  readonly b: Xy;
  readonly left: number;
  readonly right: number;
}

interface Meeting {
  readonly how: 'crosses' | 'touches' | 'folds back over';
  readonly at: Xy;
}

/**
 * Edges that meet where they may not. Rings may touch nothing, themselves included, within `touch`;
 * lines may end on anything and pass through corners, but cross only at points within `snap` of one
 * that was given. The first meeting of each two rings is told, in the order of left ends.
 */
export const checkMeetings = (
  rings: readonly Named[],
  touch: number,
  snap: number,
): readonly Fault[] => {
  const edges = rings.flatMap(edgesOf).sort((e, f) => e.left - f.left);
  const found = new Map<string, Fault>();
  for (let i = 0; i < edges.length; i++)
    for (let j = i + 1; j < edges.length && edges[j]!.left <= edges[i]!.right + touch; j++) {
      const [e, f] = inOrder(edges[i]!, edges[j]!, rings);
      const key = `${e.named.field} ${f.named.field}`;
      if (found.has(key)) continue;
      const meeting = meet(e, f, touch, snap);
      if (meeting) found.set(key, tell(e, f, meeting));
    }
  return [...found.values()];
};

const edgesOf = (named: Named): Edge[] =>
  Array.from({ length: edgeCount(named) }, (_, index) => {
    const [a, b] = endsOf(named, index);
    return { named, index, a, b, left: Math.min(a[0], b[0]), right: Math.max(a[0], b[0]) };
  });

const inOrder = (e: Edge, f: Edge, rings: readonly Named[]): readonly [Edge, Edge] => {
  const byRing = rings.indexOf(e.named) - rings.indexOf(f.named);
  return (byRing || e.index - f.index) <= 0 ? [e, f] : [f, e];
};

const meet = (e: Edge, f: Edge, touch: number, snap: number): Meeting | undefined => {
  if (apart(e, f, touch)) return undefined;
  const own = e.named === f.named;
  if (own && f.index === e.index + 1) return fold(e.a, e.b, f.b, touch);
  if (own && e.named.closed && e.index === 0 && f.index === edgeCount(f.named) - 1)
    return fold(f.a, f.b, e.b, touch);
  const at = crosses(e.a, e.b, f.a, f.b) ? crossing(e.a, e.b, f.a, f.b) : undefined;
  const ends = [e.a, e.b, f.a, f.b];
  if (!e.named.closed || !f.named.closed)
    return at && ends.every((p) => distanceOf(p, at) > snap) ? { how: 'crosses', at } : undefined;
  if (at) return { how: 'crosses', at };
  const near = ends.find((p, k) => {
    const other = k < 2 ? f : e;
    return distanceToSegment(p, other.a, other.b) <= touch;
  });
  return near && { how: 'touches', at: near };
};

const apart = (e: Edge, f: Edge, touch: number): boolean =>
  Math.max(e.a[1], e.b[1]) + touch < Math.min(f.a[1], f.b[1]) ||
  Math.max(f.a[1], f.b[1]) + touch < Math.min(e.a[1], e.b[1]);

/** Edges a–corner–b that run back over each other. */
const fold = (a: Xy, corner: Xy, b: Xy, touch: number): Meeting | undefined =>
  distanceToSegment(a, corner, b) <= touch || distanceToSegment(b, a, corner) <= touch
    ? { how: 'folds back over', at: corner }
    : undefined;

const tell = (e: Edge, f: Edge, { how, at }: Meeting): Fault => {
  const own = e.named === f.named;
  if (own || !f.named.closed) {
    const second = own ? `edge ${f.index}` : `edge ${e.index} of ${e.named.field}`;
    const [first, field] = own ? [e.index, e.named.field] : [f.index, f.named.field];
    return meetingFault(field, `Edge ${first}`, how, second, at);
  }
  const problem = `Edge ${f.index} ${how} edge ${e.index} of ${e.named.field}`;
  return holeFault(f.named.field, problem, at);
};
