import { wayBetween } from './add-runs.ts';
import { type Choosing, CLOSEST, depthWith, gapsNeeded } from './choosing.ts';
import { type Gap, gapsOf, shouldLie } from './gaps.ts';
import type { PinState } from './pin-state.ts';
import type { Supplies } from './supplies.ts';

/** An edge between two places that are held for good, with evenly spaced pins on it. */
interface Stretch {
  readonly gap: Gap;
  pins: number[];
  /** Deepest scallop on it, mm. */
  depth: number;
}

const MOST_ROUNDS = 8;

/** As many as asked at even distances, where the edge may be pinned and they are not too close. */
const spread = (state: PinState, gap: Gap, count: number): number[] => {
  const { ring } = state.sheet;
  const free = gap.within.filter((k) => ring[k]!.pinning === 'free');
  const chosen: number[] = [];
  let last = 0;
  for (let i = 1; i <= count; i++) {
    const at = (i * gap.length) / (count + 1);
    const off = (k: number) => Math.abs(wayBetween(state, gap.from, k) - at);
    const k = free.reduce((best, each) => (off(each) < off(best) ? each : best), free[0] ?? -1);
    if (k < 0) break;
    const way = wayBetween(state, gap.from, k);
    if (way - last < CLOSEST || gap.length - way < CLOSEST) continue;
    chosen.push(k);
    last = way;
  }
  return chosen;
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
  for (const stretch of stretches)
    stretch.depth = Math.max(
      0,
      ...[stretch.gap.from, ...stretch.pins].map((k) => depthAt.get(k) ?? 0),
    );
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

/** One pin fewer on each edge that is within the tolerance with room to spare; back where that was too few. */
const thin = (state: PinState, stretches: Stretch[], choosing: Choosing): void => {
  const { scallopTolerance } = choosing;
  const able = stretches.filter(
    ({ pins, depth }) =>
      pins.length > 0 && depthWith(depth, pins.length + 1, pins.length) <= 1.15 * scallopTolerance,
  );
  for (const stretch of able) {
    if (!choosing.goOn()) return;
    const [before, deepest] = [stretch.pins.length, Math.max(...stretches.map((s) => s.depth))];
    place(state, stretch, before - 1);
    state.solve();
    readDepths(state, stretches);
    const now = Math.max(...stretches.map((s) => s.depth));
    if (now <= Math.max(scallopTolerance, deepest)) continue;
    place(state, stretch, before);
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
    .map((gap): Stretch => ({ gap, pins: [], depth: gap.scallop }));
  if (stretches.length === 0) return;
  deepen(state, stretches, supplies.singles, choosing);
  thin(state, stretches, choosing);
  supplies.singles -= inAll(stretches);
};
