import type { MatWork, PinCounts } from '@dryflat/record';

/** Where a count of each kind is kept. */
const COUNTED = { straight: 'straight', 't-pin': 'tPins', comb: 'combs', wire: 'wires' } as const;

/**
 * Straight pins that hold each step that is a wire, 0 for the others: those of the plan shared out in the
 * order of the steps, whole, the larger shares first. So they add up to what is counted as in.
 */
export const pinsForEachWire = ({
  steps,
  pinsForWires,
}: Pick<MatWork, 'steps' | 'pinsForWires'>): number[] => {
  const wires = steps.filter(({ kind }) => kind === 'wire').length;
  const upTo = (count: number): number => Math.ceil((pinsForWires * count) / Math.max(1, wires));
  let before = 0;
  return steps.map(({ kind }) => {
    if (kind !== 'wire') return 0;
    before += 1;
    return upTo(before) - upTo(before - 1);
  });
};

/** What the plan still has to place, kind by kind, with the pins that hold wires. */
export const pinsToCome = (work: Pick<MatWork, 'steps' | 'pinsForWires'>): PinCounts => {
  const forWires = pinsForEachWire(work);
  const counts = { straight: 0, tPins: 0, combs: 0, wires: 0 };
  work.steps.forEach(({ kind, done }, k) => {
    if (done !== undefined) return;
    counts[COUNTED[kind]] += 1;
    counts.straight += forWires[k]!;
  });
  return counts;
};
