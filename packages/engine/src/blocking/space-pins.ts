import { wayBetween } from './add-runs.ts';
import { type Choosing, CLOSEST, depthWith, gapsNeeded } from './choosing.ts';
import { type Gap, gapsOf, shouldLie } from './gaps.ts';
import type { PinState } from './pin-state.ts';
import type { Supplies } from './supplies.ts';

/** An edge between two places that are held for good, with evenly spaced pins on it. */
interface Stretch {
  readonly gap: Gap;
  pins: number[];
  /** What more pins are to mend, mm: the deepest scallop on it, and how far a pin of it stands short, bearing all it can. */
  depth: number;
  /** The latter alone, while more pins bring it nearer. */
  short: number;
}

const MOST_ROUNDS = 8;
/** More pins bring those that bear all they can nearer by at least this share of what is left, or no more go in. */
const NEARER = 0.1;
/** Ways that differ by less are as far, mm: rounding must not decide. */
const AS_FAR = 1e-6;

/** As many as asked at even distances, where the edge may be pinned and they are not too close. */
const spreadHere = (state: PinState, gap: Gap, count: number): number[] => {
  const { ring } = state.sheet;
  const free = gap.within.filter((k) => ring[k]!.pinning === 'free');
  const chosen: number[] = [];
  let last = 0;
  for (let i = 1; i <= count; i++) {
    const at = (i * gap.length) / (count + 1);
    const off = (k: number) => Math.abs(wayBetween(state, gap.from, k) - at);
    const k = free.reduce(
      (best, each) => (off(each) < off(best) - AS_FAR ? each : best),
      free[0] ?? -1,
    );
    if (k < 0) break;
    const way = wayBetween(state, gap.from, k);
    if (way - last < CLOSEST || gap.length - way < CLOSEST) continue;
    chosen.push(k);
    last = way;
  }
  return chosen;
};

/** The same; on a symmetric piece as the mirror image of what is on the other side, or of one half. */
const spread = (state: PinState, gap: Gap, count: number): number[] => {
  const { twins } = state.sheet;
  if (twins === null) return spreadHere(state, gap, count);
  const [from, to] = [twins[gap.to]!, twins[gap.from]!];
  if (from === gap.from && to === gap.to) {
    const chosen = spreadHere(state, gap, count);
    const half = chosen.slice(0, chosen.length >> 1);
    const middle = gap.within.filter((k) => twins[k] === k);
    const centre = chosen.length % 2 === 1 ? middle.slice(0, 1) : [];
    return [...half, ...centre, ...half.map((k) => twins[k]!).reverse()];
  }
  if (gap.from < from) return spreadHere(state, gap, count);
  const within = gap.within.map((k) => twins[k]!).reverse();
  return spreadHere(state, { ...gap, from, to, within }, count)
    .map((k) => twins[k]!)
    .reverse();
};

const place = (state: PinState, stretch: Stretch, count: number): void => {
  for (const k of stretch.pins) state.pins.delete(k);
  stretch.pins = spread(state, stretch.gap, count);
  for (const k of stretch.pins) {
    state.targets[k] = shouldLie(state, stretch.gap.from, stretch.gap.to, k);
    state.pins.add(k);
  }
};

const readDepths = (state: PinState, stretches: readonly Stretch[]): void => {
  const depthAt = new Map<number, number>();
  for (const { from, scallop } of gapsOf(state)) depthAt.set(from, scallop);
  for (const stretch of stretches) {
    const from = [stretch.gap.from, ...stretch.pins];
    const short = Math.max(...[...from, stretch.gap.to].map((k) => state.slip(k)));
    stretch.short = short <= (1 - NEARER) * stretch.short ? short : 0;
    stretch.depth = Math.max(stretch.short, ...from.map((k) => depthAt.get(k) ?? 0));
  }
};

const inAll = (stretches: readonly Stretch[]): number =>
  stretches.reduce((sum, { pins }) => sum + pins.length, 0);

/** Counts that the stock allows: one pin at a time to the edge that is foretold to be deepest. */
const shareOut = (wanted: readonly number[], stretches: readonly Stretch[], most: number) => {
  const counts = wanted.map(() => 0);
  const deepest = () => {
    const foretold = stretches.map(({ depth, pins }, i) =>
      counts[i]! < wanted[i]! ? depthWith(depth, pins.length + 1, counts[i]! + 1) : -1,
    );
    return foretold.indexOf(Math.max(...foretold));
  };
  for (let left = most; left > 0 && counts.some((c, i) => c < wanted[i]!); left--)
    counts[deepest()]! += 1;
  return counts;
};

/** More pins on every edge that is too deep, until none is or no more go in. */
const deepen = (state: PinState, stretches: Stretch[], most: number, choosing: Choosing): void => {
  for (let round = 0; round < MOST_ROUNDS && choosing.goOn(); round++) {
    const wanted = stretches.map(
      ({ depth, pins }) => gapsNeeded(pins.length + 1, depth, choosing.scallopTolerance) - 1,
    );
    const sum = wanted.reduce((a, b) => a + b, 0);
    const counts = sum <= most ? wanted : shareOut(wanted, stretches, most);
    const before = inAll(stretches);
    let changed = false;
    stretches.forEach((stretch, i) => {
      if (counts[i] === stretch.pins.length) return;
      const was = stretch.pins.join();
      place(state, stretch, counts[i]!);
      changed ||= stretch.pins.join() !== was;
    });
    if (!changed) return;
    state.solve();
    readDepths(state, stretches);
    if (inAll(stretches) === before) return;
  }
};

/** Whether a gap is the mirror image of another. */
const isTwin = ({ sheet: { twins } }: PinState, a: Gap, b: Gap): boolean =>
  twins !== null && a.from !== b.from && twins[a.from] === b.to && twins[a.to] === b.from;

/** One pin fewer on each edge that is within the tolerance with room to spare; back where that was too few. */
const thin = (state: PinState, stretches: Stretch[], choosing: Choosing): void => {
  const { scallopTolerance } = choosing;
  const able = stretches.filter(
    ({ pins, depth }) =>
      pins.length > 0 && depthWith(depth, pins.length + 1, pins.length) <= 1.15 * scallopTolerance,
  );
  for (const stretch of able) {
    if (!choosing.goOn()) return;
    const both = [stretch, ...stretches.filter((other) => isTwin(state, stretch.gap, other.gap))];
    if (both.length > 1 && stretch.gap.from > both[1]!.gap.from) continue;
    const before = both.map(({ pins }) => pins.length);
    const deepest = Math.max(...stretches.map((s) => s.depth));
    both.forEach((each, k) => {
      place(state, each, Math.max(0, before[k]! - 1));
    });
    state.solve();
    readDepths(state, stretches);
    const now = Math.max(...stretches.map((s) => s.depth));
    if (now <= Math.max(scallopTolerance, deepest)) continue;
    both.forEach((each, k) => {
      place(state, each, before[k]!);
    });
    state.solve();
    readDepths(state, stretches);
  }
};

/**
 * Evenly spaced pins on every edge between two that are held, as few as keep its scallops within the
 * tolerance; with less stock, shared out so that the deepest is least deep.
 */
export const spacePins = (state: PinState, supplies: Supplies, choosing: Choosing): void => {
  const wired = new Set(
    state.runs.flatMap(({ kind, nodes }) => (kind === 'wire' ? nodes.slice(0, -1) : [])),
  );
  const stretches = gapsOf(state)
    .filter(({ from }) => !wired.has(from))
    .map((gap): Stretch => ({ gap, pins: [], depth: 0, short: Number.POSITIVE_INFINITY }));
  if (stretches.length === 0) return;
  readDepths(state, stretches);
  deepen(state, stretches, supplies.singles, choosing);
  thin(state, stretches, choosing);
  supplies.singles -= inAll(stretches);
};
