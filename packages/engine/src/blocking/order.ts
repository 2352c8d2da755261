import type { PieceSheet } from './piece-sheet.ts';
import type { Placement } from './placements.ts';
import { distance } from './plane.ts';

/** Among places about as far from all others, the one opposite to the last is next. */
const ABOUT = 0.85;

/** Places as far from the middle, or as high, within this are alike, mm: rounding of a drawing. */
const ALIKE = 1e-3;

const middleNode = ({ nodes }: Placement): number => nodes[nodes.length >> 1]!;

/**
 * From the middle of the top edge outwards, across and along together: each next placement is the one
 * farthest around the edge from all that are in, opposite to the last where several are. So height and
 * width are set from the start, and pins on the way between fixed places only fill in.
 */
export const outwardOrder = (
  sheet: PieceSheet,
  all: readonly Placement[],
  already: readonly Placement[] = [],
): Placement[] => {
  if (all.length === 0) return [...already];
  const { ring, around } = sheet;
  const way = (p: Placement) => ring[middleNode(p)]!.around;
  const apart = (a: Placement, b: Placement) => {
    const d = Math.abs(way(a) - way(b));
    return Math.min(d, around - d);
  };
  const xs = all.map(({ at }) => at.x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const height = (p: Placement) => p.at.y - 2 * Math.abs(p.at.x - middle);
  const pins = all.filter(({ kind }) => kind !== 'wire');
  const order = [...already];
  if (order.length === 0 && pins.length > 0)
    order.push(pins.reduce((best, p) => (height(p) > height(best) ? p : best)));
  const left = new Set(pins.filter((p) => p !== order[0]));
  const least = new Map([...left].map((p) => [p, Math.min(...order.map((o) => apart(p, o)))]));
  while (left.size > 0) {
    const last = order.at(-1)!;
    const most = Math.max(...[...left].map((p) => least.get(p)!));
    const near = [...left].filter((p) => least.get(p)! >= ABOUT * most);
    const twin = twinOf(sheet, last, left);
    const next =
      twin ??
      near.reduce((best, p) => (distance(p.at, last.at) > distance(best.at, last.at) ? p : best));
    order.push(next);
    left.delete(next);
    for (const p of left) least.set(p, Math.min(least.get(p)!, apart(p, next)));
  }
  return withWires(
    order,
    all.filter(({ kind }) => kind === 'wire'),
    already.length,
  );
};

/** The mirror image of a pin, where it is still to be put in. */
const twinOf = (
  { twins }: PieceSheet,
  { kind, nodes }: Placement,
  left: ReadonlySet<Placement>,
): Placement | undefined => {
  const twin = twins?.[nodes[0]!];
  if (kind !== 'pin' || twin === undefined) return undefined;
  return [...left].find((p) => p.kind === 'pin' && p.nodes[0] === twin);
};

/** A wire goes in right after the later of the pins at its ends. */
const withWires = (
  order: readonly Placement[],
  wires: readonly Placement[],
  already: number,
): Placement[] => {
  const done = [...order];
  for (const wire of wires) {
    const ends = new Set([wire.nodes[0], wire.nodes.at(-1)]);
    const after = done.findLastIndex(({ nodes }) => nodes.some((k) => ends.has(k)));
    done.splice(Math.max(after + 1, already), 0, wire);
  }
  return done;
};

/** Which way the wanted edge faces at a ring index. */
export const facing = ({ ring }: PieceSheet, k: number): 'down' | 'up' | 'sideways' => {
  const [a, b] = [ring.at(k - 1)!.wanted, ring[(k + 1) % ring.length]!.wanted];
  const [nx, ny] = [b.y - a.y, a.x - b.x];
  if (Math.abs(ny) <= Math.abs(nx)) return 'sideways';
  return ny > 0 ? 'up' : 'down';
};

const STAGES = { down: 0, up: 1, sideways: 2 } as const;

/** The lower edge from its middle outwards, then the upper one alike, then the sides from below, left and right in turn. */
export const lowerEdgeFirst = (sheet: PieceSheet, all: readonly Placement[]): Placement[] => {
  const xs = all.map(({ at }) => at.x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const key = (p: Placement) => {
    const stage = STAGES[facing(sheet, middleNode(p))];
    const along = stage === STAGES.sideways ? p.at.y : Math.abs(p.at.x - middle);
    return [stage, Math.round(along / ALIKE), p.at.x] as const;
  };
  const keys = new Map(all.map((p) => [p, key(p)]));
  const order = [...all].sort((p, q) => {
    const [a, b] = [keys.get(p)!, keys.get(q)!];
    return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
  });
  return withWires(
    order.filter(({ kind }) => kind !== 'wire'),
    order.filter(({ kind }) => kind === 'wire'),
    0,
  );
};
