import { type Choosing, CLOSEST } from './choosing.ts';
import { type Gap, gapsOf } from './gaps.ts';
import { measured, type Ruler, rulersOf } from './measure.ts';
import type { PieceSheet, RingNode } from './piece-sheet.ts';
import type { PinState } from './pin-state.ts';
import { distance } from './plane.ts';
import type { Supplies } from './supplies.ts';

/** Trials of leaving a pin out. */
const MOST_TRIALS = 24;

export interface Standing {
  readonly gaps: readonly Gap[];
  readonly scallop: number;
  /** Dimensions that are off by more than their tolerance: how much more, mm. */
  readonly off: readonly { readonly ruler: Ruler; readonly by: number }[];
}

export const standingOf = (state: PinState): Standing => {
  const { ring } = state.sheet;
  const gaps = gapsOf(state);
  const off = rulersOf(state.sheet)
    .map((ruler) => ({
      ruler,
      by:
        Math.abs(measured(ruler, ring, state.eq.points) - ruler.dimension.targetMm) -
        ruler.tolerance,
    }))
    .filter(({ by }) => by > 0);
  return { gaps, scallop: gaps.reduce((most, g) => Math.max(most, g.scallop), 0), off };
};

/** Ends of lengths that lie on the edge of ribbing: ring indices. */
const endsInLength = (sheet: PieceSheet): Set<number> => {
  const lengths = rulersOf(sheet).filter(({ dimension }) => dimension.direction === 'length');
  const ends = lengths.flatMap(({ from, to }) => [from, to]);
  return new Set(ends.filter((k) => sheet.ring[k]!.pinning === 'length'));
};

/** Corners and ends of dimensions that may be pinned, those first that lie farthest apart. */
const firstPlaces = (sheet: PieceSheet, fixed: readonly number[]): number[] => {
  const { ring } = sheet;
  const taken = new Set(fixed);
  const ends = endsInLength(sheet);
  const may = ({ role, pinning }: RingNode, k: number) =>
    pinning === 'free' ||
    (pinning === 'length' && ends.size > 0 && (ends.has(k) || role === 'corner'));
  const wanted = ring.flatMap((node, k) =>
    !taken.has(k) && (node.role === 'asked' || (node.role !== 'plain' && may(node, k))) ? [k] : [],
  );
  const rank = { asked: 0, corner: 1, dimension: 2, plain: 3 } as const;
  const groups = [0, 1, 2].map((r) => wanted.filter((k) => rank[ring[k]!.role] === r));
  const chosen = [...fixed];
  for (const group of groups) {
    const left = new Set(group);
    while (left.size > 0) {
      const next = farthest(ring, left, chosen);
      left.delete(next.index);
      if (ring[next.index]!.role === 'asked' || next.apart >= CLOSEST || chosen.length === 0)
        chosen.push(next.index);
    }
  }
  const found = chosen.slice(fixed.length);
  return [...new Set(found.flatMap((k) => [k, sheet.twins?.[k] ?? k]))];
};

const farthest = (
  ring: readonly RingNode[],
  left: ReadonlySet<number>,
  chosen: readonly number[],
) => {
  let best = { index: -1, apart: -1 };
  const middle = {
    x: ring.reduce((s, n) => s + n.rest.x, 0) / ring.length,
    y: ring.reduce((s, n) => s + n.rest.y, 0) / ring.length,
  };
  for (const index of left) {
    const { rest } = ring[index]!;
    const apart =
      chosen.length === 0
        ? distance(rest, middle)
        : Math.min(...chosen.map((k) => distance(rest, ring[k]!.rest)));
    if (apart > best.apart) best = { index, apart };
  }
  return best;
};

/** Pins corners and ends of dimensions, as far as the stock goes; whether it went all the way. */
export const pinFirst = (state: PinState, supplies: Supplies): boolean => {
  for (const k of firstPlaces(state.sheet, state.fixed())) {
    if (supplies.singles === 0) return false;
    state.pins.add(k);
    supplies.singles -= 1;
  }
  return true;
};

/** Within tolerances, or no worse than it stood before. */
const noWorse = (now: Standing, before: Standing, scallopTolerance: number): boolean => {
  const deep = Math.max(scallopTolerance, before.scallop);
  const off = new Map(before.off.map(({ ruler, by }) => [ruler.dimension.name, by]));
  return (
    now.scallop <= deep &&
    now.off.every(({ ruler, by }) => by <= (off.get(ruler.dimension.name) ?? 0) + 0.05)
  );
};

/** A corner that sticks out is always pinned, but of ribbing: without it the piece has another shape. */
const sticksOut = ({ ring }: PinState['sheet'], k: number): boolean => {
  const [a, b, c] = [ring.at(k - 1)!, ring[k]!, ring[(k + 1) % ring.length]!].map((n) => n.wanted);
  const cross = (b!.x - a!.x) * (c!.y - b!.y) - (b!.y - a!.y) * (c!.x - b!.x);
  return ring[k]!.role === 'corner' && ring[k]!.pinning === 'free' && cross > 0;
};

/** The scallop that would follow, were the pin between two gaps left out: it grows with the square of their length. */
const withoutIt = (state: PinState, k: number): number => {
  const gaps = gapsOf(state);
  const [left, right] = [gaps.find(({ to }) => to === k), gaps.find(({ from }) => from === k)];
  const lengths = [left?.length ?? 0, right?.length ?? 0];
  const [sum, longest] = [lengths[0]! + lengths[1]!, Math.max(...lengths)];
  if (longest === 0) return 0;
  return Math.max(left?.scallop ?? 0, right?.scallop ?? 0) * (sum / longest) ** 2;
};

/** A pin, with the one at its mirror image where there is one. */
const twinIn = ({ sheet, pins }: PinState, k: number): number[] => {
  const twin = sheet.twins?.[k] ?? k;
  return twin !== k && pins.has(twin) ? [k, twin] : [k];
};

/** Leaves out pins that nothing pulls at. */
export const dropLoose = (state: PinState, supplies: Supplies): void => {
  const loose = new Set(state.released().filter((k) => !state.isIn(k)));
  const alone = (k: number) => twinIn(state, k).every((each) => loose.has(each));
  for (const k of loose) if (alone(k) && state.pins.delete(k)) supplies.singles += 1;
};

/**
 * Leaves out pins that are not needed, those with the least pull first, and on a symmetric piece both of a
 * pair or neither. `kept` are left out only where nothing pulls.
 */
export const dropPins = (
  state: PinState,
  supplies: Supplies,
  choosing: Choosing,
  kept: ReadonlySet<number> = new Set(),
): void => {
  dropLoose(state, supplies);
  const keep = (k: number) =>
    state.isIn(k) ||
    kept.has(k) ||
    state.sheet.ring[k]!.role === 'asked' ||
    sticksOut(state.sheet, k);
  const ends = new Set(state.runs.flatMap(({ nodes }) => [nodes[0]!, nodes.at(-1)!]));
  const before = standingOf(state);
  const candidates = [...state.pins]
    .filter((k) => twinIn(state, k).every((each) => k <= each && !keep(each) && !ends.has(each)))
    .map((k) => ({ k, pull: state.pull(k), guess: withoutIt(state, k) }))
    .filter(({ guess }) => guess <= 1.5 * Math.max(choosing.scallopTolerance, before.scallop))
    .sort((a, b) => a.pull - b.pull)
    .slice(0, MOST_TRIALS);
  let dirty = false;
  for (const { k } of candidates) {
    if (!choosing.goOn()) break;
    const both = twinIn(state, k);
    for (const each of both) state.pins.delete(each);
    state.solve();
    dirty = !noWorse(standingOf(state), before, choosing.scallopTolerance);
    if (dirty) for (const each of both) state.pins.add(each);
    else supplies.singles += both.length;
  }
  if (dirty) state.solve();
};
