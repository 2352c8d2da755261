import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { explain } from '../units/index.ts';
import { randomQuestion } from './check/random-question.ts';
import { planBlock } from './plan.ts';

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
};

/** Enough to hold a star's edges; the laws do not ask for a fine answer. */
const NODES = 8;
const BATCHES = draws(4, 20);
const EACH = 500;
/** One in so many is worked out in full; of the others only as much as tells faults from answers, cut short. */
const IN_FULL = 10;
/** Evaluations of a sheet that is cut short: a few solves. */
const FEW = 100;

const tally = { planned: 0, refused: 0 };

describe('B12: any piece gets a clear answer', () => {
  it.each(Array.from({ length: BATCHES }, (_, k) => k))('random pieces, batch %i', (batch) => {
    for (let k = 0; k < EACH; k++) {
      const seed = batch * EACH + k;
      const asked = randomQuestion(seed);
      const cost = seed % IN_FULL === 0 ? {} : { mostEvaluations: FEW };
      const made = planBlock(asked, { nodes: NODES, ...cost });
      if (!made.ok) {
        tally.refused += 1;
        expect(made.faults.length, `seed ${seed}`).toBeGreaterThan(0);
        for (const fault of made.faults) expect(explain(fault)).toMatch(/^\S.*: .+\. .+/s);
        continue;
      }
      tally.planned += 1;
      const piece = made.value.pieces[0]!;
      const wrong = numbersIn(piece).filter((v) => !Number.isFinite(v));
      if (wrong.length > 0) throw new Error(`seed ${seed}: ${wrong.length} numbers are none`);
      const { straight, tPins } = asked.stock;
      const singles = piece.pins.filter(({ along }) => along === null).length + piece.pinsForWires;
      expect(singles, `seed ${seed}`).toBeLessThanOrEqual(straight + tPins);
      for (const { name, reachedMm, within } of piece.measurements) {
        expect(reachedMm.p05Mm <= reachedMm.p50Mm && reachedMm.p50Mm <= reachedMm.p95Mm).toBe(true);
        // What is off is said, and why.
        const said = piece.couldNot.some(({ what, why }) => what.startsWith(name) && why !== '');
        expect(said, `seed ${seed} ${name}`).toBe(!within);
      }
    }
  });

  it('most of them are planned, and some are refused', () => {
    expect(tally.planned + tally.refused).toBe(BATCHES * EACH);
    expect(tally.planned).toBeGreaterThan(0.5 * BATCHES * EACH);
    expect(tally.refused).toBeGreaterThan(0.1 * BATCHES * EACH);
  });
});
