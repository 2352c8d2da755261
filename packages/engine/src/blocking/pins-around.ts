import { addRuns } from './add-runs.ts';
import { dropLoose, dropPins, pinFirst, standingOf } from './choose-pins.ts';
import type { Choosing } from './choosing.ts';
import { shouldLie } from './gaps.ts';
import { nodesOn } from './held-on-mat.ts';
import type { PinState } from './pin-state.ts';
import type { Placement } from './placements.ts';
import { distance } from './plane.ts';
import { spacePins } from './space-pins.ts';
import { pinsForWire, type Supplies } from './supplies.ts';
import type { PinPlaced } from './types.ts';

/** Steps that were still to come and stay, by the ring index of their first node: pins, and combs and wires. */
export interface Kept {
  readonly pins: ReadonlyMap<number, PinPlaced>;
  readonly runs: ReadonlyMap<number, PinPlaced>;
}

/** Kept steps by what became of them. */
export const keptAs = (
  { pins, runs }: Kept,
  { kind, nodes }: Pick<Placement, 'kind' | 'nodes'>,
): PinPlaced | undefined => (kind === 'pin' ? pins : runs).get(nodes[0]!);

/** A comb or a wire that was still to come goes where it was to go, if it is at hand. */
const keepRun = (
  state: PinState,
  step: PinPlaced,
  nodes: number[],
  supplies: Supplies,
): boolean => {
  const { kind, along } = step;
  if (along === null || nodes.length < 2 || (kind !== 'comb' && kind !== 'wire')) return false;
  const ended = [nodes[0]!, nodes.at(-1)!].every((k) => state.pins.has(k));
  if ((kind === 'wire' && !ended) || !supplies.take(kind, along.lengthMm)) return false;
  const [first, last] = [nodes[0]!, nodes.at(-1)!];
  const isWire = kind === 'wire';
  const pins = isWire ? pinsForWire(distance(state.targets[first]!, state.targets[last]!)) : 1;
  const extra = isWire ? pins : 0;
  if (extra > supplies.singles) {
    supplies.giveBack(kind, along.lengthMm);
    return false;
  }
  supplies.singles -= extra;
  const most = state.mostPull * pins;
  state.runs.push({ kind, nodes, lengthMm: along.lengthMm, pins, most });
  return true;
};

/** Between what is in, a pin or a comb that was to come lies on the wanted line as that has moved. */
const alignRuns = (state: PinState, kept: Kept): void => {
  const fixed = state.fixed();
  const own = new Set(
    state.runs.flatMap(({ kind, nodes }) =>
      kind === 'comb' && kept.runs.has(nodes[0]!) ? nodes : [],
    ),
  );
  const firm = fixed.filter((k) => state.isIn(k));
  if (firm.length < 2) return;
  for (const k of fixed) {
    if (
      state.isIn(k) ||
      !(own.has(k) || state.pins.has(k)) ||
      state.sheet.ring[k]!.role !== 'plain'
    )
      continue;
    const from = firm.findLast((each) => each < k) ?? firm.at(-1)!;
    const to = firm.find((each) => each > k) ?? firm[0]!;
    state.targets[k] = shouldLie(state, from, to, k);
  }
};

/** The steps that were to come, as far as the stock goes: first what a corner or a dimension needs. */
const keepSteps = (state: PinState, before: readonly PinPlaced[], supplies: Supplies): Kept => {
  const kept = { pins: new Map<number, PinPlaced>(), runs: new Map<number, PinPlaced>() };
  const { ring } = state.sheet;
  const taken = new Set(state.fixed());
  const single = (step: PinPlaced) => nodesOn(state.sheet, step.on)[0]!;
  const singles = before.filter(({ along }) => along === null);
  const fit = new Set(singles.map(single).filter((k) => !taken.has(k)));
  const firm = [...fit].filter((k) => ring[k]!.role !== 'plain');
  // Too few for all: those between are shared out anew.
  const able = fit.size <= supplies.singles ? [...fit] : firm.slice(0, supplies.singles);
  for (const k of able) {
    state.pins.add(k);
    kept.pins.set(k, singles.find((step) => single(step) === k)!);
  }
  supplies.singles -= able.length;
  for (const step of before) {
    const nodes = nodesOn(state.sheet, step.on);
    if (step.along !== null && keepRun(state, step, nodes, supplies))
      kept.runs.set(nodes[0]!, step);
  }
  return kept;
};

/**
 * Pins around what is in: the steps that were to come where there are any, more where the edge or a
 * dimension is helped by them, none where nothing pulls; a plan of its own where no steps were given.
 */
export const pinsAround = (
  state: PinState,
  before: readonly PinPlaced[],
  supplies: Supplies,
  choosing: Choosing,
): Kept => {
  const kept = keepSteps(state, before, supplies);
  if (before.length === 0) pinFirst(state, supplies);
  else alignRuns(state, kept);
  state.solve();
  if (before.length > 0 && standingOf(state).off.length > 0) {
    const was = state.pins.size;
    pinFirst(state, supplies);
    if (state.pins.size > was) {
      state.solve();
      // As when the plan was made: a pin that helps no dimension is not put in.
      dropPins(state, supplies, choosing, new Set(kept.pins.keys()));
    }
  }
  addRuns(state, supplies, choosing);
  spacePins(state, supplies, choosing);
  if (before.length === 0) dropPins(state, supplies, choosing);
  else dropLoose(state, supplies);
  return kept;
};
