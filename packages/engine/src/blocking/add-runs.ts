import { type Choosing, CLOSEST, gapsNeeded } from './choosing.ts';
import { type Gap, gapsOf, shouldLie } from './gaps.ts';
import type { PinState } from './pin-state.ts';
import { distance } from './plane.ts';
import { isStraight } from './straight.ts';
import type { Supplies } from './supplies.ts';

const withEnds = ({ from, within, to }: Gap) => [from, ...within, to];

/** Way around the rest outline from one ring index to another, mm. */
export const wayBetween = ({ sheet }: PinState, a: number, b: number): number =>
  (sheet.ring[b]!.around - sheet.ring[a]!.around + sheet.around) % sheet.around;

const addWire = (state: PinState, gap: Gap, supplies: Supplies): boolean => {
  const wire = supplies.wireFor(distance(state.targets[gap.from]!, state.targets[gap.to]!));
  if (wire === null) return false;
  state.runs.push({
    kind: 'wire',
    nodes: withEnds(gap),
    ...wire,
    most: state.mostPull * wire.pins,
  });
  return true;
};

/** Combs along a gap, evenly, as many as it needs and there are. */
const addCombs = (state: PinState, gap: Gap, supplies: Supplies, choosing: Choosing): boolean => {
  const wanted = gapsNeeded(1, gap.scallop, choosing.scallopTolerance) - 1;
  let placed = 0;
  for (let i = 0; i < wanted; i++) {
    const middle = ((i + 1) * gap.length) / (wanted + 1);
    const room = gap.length / (wanted + 1) - 2 * CLOSEST;
    const length = supplies.combFor(Math.max(room, 0));
    if (length === null) break;
    if (addComb(state, gap, middle, length)) placed += 1;
    else supplies.giveBack('comb', length);
  }
  return placed > 0;
};

const addComb = (state: PinState, gap: Gap, middle: number, length: number): boolean => {
  const nodes = gap.within.filter(
    (k) => Math.abs(wayBetween(state, gap.from, k) - middle) <= length / 2,
  );
  if (nodes.length < 2) return false;
  for (const k of nodes) state.targets[k] = shouldLie(state, gap.from, gap.to, k);
  state.runs.push({ kind: 'comb', nodes, lengthMm: length, pins: 1, most: state.mostPull });
  return true;
};

/**
 * Wires, then combs, along the straight edges that scallop too deep, the deepest first. A wire takes
 * the whole edge between two pins.
 */
export const addRuns = (state: PinState, supplies: Supplies, choosing: Choosing): void => {
  const allowed = (gap: Gap) =>
    gap.within.every((k) => state.sheet.ring[k]!.pinning === 'free') &&
    isStraight(state.sheet, withEnds(gap));
  const deep = gapsOf(state)
    .filter((gap) => gap.scallop > choosing.scallopTolerance && allowed(gap))
    .sort((a, b) => b.scallop - a.scallop);
  const added = deep.filter(
    (gap) => addWire(state, gap, supplies) || addCombs(state, gap, supplies, choosing),
  );
  if (added.length > 0) state.solve();
};
