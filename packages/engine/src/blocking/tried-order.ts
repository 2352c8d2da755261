import { solveWith } from './lie.ts';
import { facing, lowerEdgeFirst, outwardOrder } from './order.ts';
import { placeIn } from './piece-sheet.ts';
import type { Placement } from './placements.ts';
import { distance } from './plane.ts';
import { pullOn } from './pull-on.ts';
import type { Rehearsal } from './rehearsal.ts';
import type { OrderTried, OrderWay } from './types.ts';

/** A pin that is this far from its place once it went in has slipped, mm: what a tape tells. */
const SLIPPED = 2;
/** Highest pulls that differ by less are alike, N: what two meshes of a piece differ by. */
const AS_HARD = 0.2;
const MOST_REPAIRS = 2;

/** What happened while the pins went in, one after another. */
interface Tried {
  readonly order: readonly Placement[];
  /** Placements that were off their places when they went in or after a later one: with the step that did it. */
  readonly slipped: ReadonlyMap<Placement, number>;
  /** The most that one pin bore, N. */
  readonly highestPull: number;
  /** How far the lower edge rose while none of its pins was in, mm. */
  readonly rises: number;
  readonly iterations: number;
  /** False where it ended before the last was in. */
  readonly whole: boolean;
}

/** Puts the placements in one by one, solving each time from how the piece lay before; the first `already` at once. */
const tried = (
  rehearsal: Rehearsal,
  order: readonly Placement[],
  goOn: () => boolean,
  already = 0,
): Tried => {
  const { sheet, targets, nodesOf } = rehearsal;
  const { ring, effort } = sheet;
  const lower = rehearsal.held.filter((k) => facing(sheet, k) === 'down');
  const slipped = new Map<Placement, number>();
  let [highestPull, rises, iterations] = [0, 0, 0];
  sheet.solver.reset();
  let step = Math.max(0, already - 1);
  for (; step < order.length && goOn() && effort.goOn(); step++) {
    const placed = order.slice(0, step + 1);
    const { constraints, of } = rehearsal.fixingOf(placed);
    const eq = solveWith(sheet, constraints, true);
    iterations += eq.iterations;
    const at = (k: number) => placeIn(eq.points, ring[k]!.node);
    for (const each of placed) {
      const nodes = nodesOf.get(each)!;
      const pull = pullOn({ ...each, nodes }, of, eq.reactions) / each.heldBy;
      highestPull = Math.max(highestPull, pull);
      if (each.kind === 'wire' || slipped.has(each) || order.indexOf(each) < already) continue;
      if (nodes.some((k) => distance(at(k), targets[k]!) > SLIPPED)) slipped.set(each, step);
    }
    const held = new Set(of);
    if (step > 0 && !lower.some((k) => held.has(k)))
      rises = Math.max(rises, ...lower.map((k) => at(k).y - ring[k]!.rest.y));
  }
  return { order, slipped, highestPull, rises, iterations, whole: step >= order.length };
};

/** Fewer pins slip, or none is pulled as hard. */
const isBetter = (a: Tried, b: Tried): boolean =>
  a.slipped.size < b.slipped.size ||
  (a.slipped.size === b.slipped.size && a.highestPull < b.highestPull - AS_HARD);

export interface Ordered {
  readonly order: readonly Placement[];
  /** Null where it could not be tried to its end. */
  readonly tried: OrderTried | null;
  readonly iterations: number;
}

/** At the end every pin bears what the plan says, which is read on a finer mesh. */
const told = (way: OrderWay, tried: Tried): OrderTried | null =>
  tried.whole
    ? {
        way,
        highestPullN: Math.max(tried.highestPull, ...tried.order.map(({ pullN }) => pullN)),
        slipped: tried.slipped.size,
        lowerEdgeRisesMm: tried.rises,
      }
    : null;

/**
 * The better of two orders, both tried with all pins at the same places: from the middle of the top outwards,
 * and the lower edge first. Where pins slip in it, it is repaired; the other is told beside it.
 */
export const orderOf = (
  rehearsal: Rehearsal,
  all: readonly Placement[],
  goOn: () => boolean,
): Ordered & { readonly other: OrderTried | null } => {
  const outwards = tried(rehearsal, outwardOrder(rehearsal.planned, all), goOn);
  const lower = tried(rehearsal, lowerEdgeFirst(rehearsal.planned, all), goOn);
  const isLower = lower.whole && isBetter(lower, outwards);
  const [best, other] = isLower ? [lower, outwards] : [outwards, lower];
  const ways = ['outwards', 'lower-edge-first'] as const;
  const [way, otherWay] = isLower ? [ways[1], ways[0]] : ways;
  const repaired = repairs(rehearsal, best, goOn);
  return {
    order: repaired.order,
    tried: told(way, repaired),
    other: told(otherWay, other),
    iterations: repaired.iterations + other.iterations,
  };
};

/** The order to start with, whose first `already` are in and stay first, repaired where pins slip in it. */
export const repairedOrder = (
  rehearsal: Rehearsal,
  start: readonly Placement[],
  goOn: () => boolean,
  already = 0,
): Ordered => {
  const found = repairs(rehearsal, tried(rehearsal, start, goOn, already), goOn, already);
  return { order: found.order, tried: told('as-it-stood', found), iterations: found.iterations };
};

/** Pins that slip wait for the one that made them slip, as long as that leaves fewer of them. */
const repairs = (rehearsal: Rehearsal, start: Tried, goOn: () => boolean, already = 0): Tried => {
  let found = start;
  let { iterations } = start;
  const { effort } = rehearsal.sheet;
  for (let k = 0; k < MOST_REPAIRS && found.slipped.size > 0 && goOn() && effort.goOn(); k++) {
    const again = tried(rehearsal, waiting(found), goOn, already);
    iterations += again.iterations;
    if (!again.whole || again.slipped.size >= found.slipped.size) break;
    found = again;
  }
  return { ...found, iterations };
};

const waiting = ({ order, slipped }: Tried): Placement[] => {
  const rank = new Map(order.map((p, k) => [p, k]));
  // One that did not reach its own place when it went in waits for a few others.
  for (const [placement, step] of slipped)
    rank.set(placement, Math.max(step, rank.get(placement)! + 3) + 0.5);
  return [...order].sort((a, b) => rank.get(a)! - rank.get(b)!);
};
