import { ROUGH, solveWith } from './lie.ts';
import { type PieceSheet, placeIn } from './piece-sheet.ts';
import type { Placement } from './placements.ts';
import { distance } from './plane.ts';
import type { Rehearsal } from './rehearsal.ts';

/** A pin that is this far from its place, once others are in, has moved, mm: what a tape tells. */
export const MOVED = 2;
/** Among places about as far from all others, the one opposite to the last is next. */
const ABOUT = 0.85;
const MOST_REPAIRS = 2;

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

/** What happened while the pins went in, one after another. */
export interface Simulated {
  /** Placements that were not where they belong after a later one, or when they went in: with the step that did it. */
  readonly moved: ReadonlyMap<Placement, number>;
  readonly iterations: number;
}

/** Puts the placements in one by one, solving each time from how the piece lay before; the first `already` at once. */
export const simulate = (
  rehearsal: Rehearsal,
  order: readonly Placement[],
  goOn: () => boolean,
  already = 0,
): Simulated => {
  const { sheet, targets, nodesOf } = rehearsal;
  const moved = new Map<Placement, number>();
  let iterations = 0;
  sheet.solver.reset();
  for (
    let step = Math.max(0, already - 1);
    step < order.length && goOn() && sheet.effort.goOn();
    step++
  ) {
    const placed = order.slice(0, step + 1);
    const eq = solveWith(sheet, rehearsal.constraintsOf(placed), ROUGH);
    iterations += eq.iterations;
    const off = (k: number) => distance(placeIn(eq.points, sheet.ring[k]!.node), targets[k]!);
    for (const each of placed.slice(already))
      if (
        each.kind !== 'wire' &&
        nodesOf.get(each)!.some((k) => off(k) > MOVED) &&
        !moved.has(each)
      )
        moved.set(each, step);
  }
  return { moved, iterations };
};

export interface Ordered {
  readonly order: readonly Placement[];
  readonly moved: number;
  readonly iterations: number;
}

/** The outward order, repaired where the simulation shows that a pin moves: it then waits for the one that moved it. */
export const orderOf = (
  rehearsal: Rehearsal,
  all: readonly Placement[],
  goOn: () => boolean,
): Ordered => repairedOrder(rehearsal, outwardOrder(rehearsal.planned, all), goOn);

/** The same from an order to start with, whose first `already` are in and stay first. */
export const repairedOrder = (
  rehearsal: Rehearsal,
  start: readonly Placement[],
  goOn: () => boolean,
  already = 0,
): Ordered => {
  let order = start;
  let found = simulate(rehearsal, order, goOn, already);
  let iterations = found.iterations;
  for (
    let k = 0;
    k < MOST_REPAIRS && found.moved.size > 0 && goOn() && rehearsal.sheet.effort.goOn();
    k++
  ) {
    const other = repaired(order, found.moved);
    const again = simulate(rehearsal, other, goOn, already);
    iterations += again.iterations;
    if (again.moved.size >= found.moved.size) break;
    [order, found] = [other, again];
  }
  return { order, moved: found.moved.size, iterations };
};

const repaired = (
  order: readonly Placement[],
  moved: ReadonlyMap<Placement, number>,
): Placement[] => {
  const rank = new Map(order.map((p, k) => [p, k]));
  // One that did not reach its own place when it went in waits for a few others.
  for (const [placement, step] of moved)
    rank.set(placement, Math.max(step, rank.get(placement)! + 3) + 0.5);
  return [...order].sort((a, b) => rank.get(a)! - rank.get(b)!);
};
