import { describe, expect, it } from 'vitest';
import { QUESTION } from './check/questions.ts';
import { routes } from './routes.ts';
import { skeinPlan } from './skein-plan.ts';
import type { RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 3, draws: 2000 } as const;
const LOT = { dyeLot: '1', skeins: 4, gramsEach: 50, metresEach: 100 };
const advice = (change: Partial<RoutesQuestion>) => {
  const told = skeinPlan({ ...QUESTION, ...change }, OPTIONS);
  if (!told.ok) throw new Error(JSON.stringify(told.faults));
  return told.value;
};
const left = (leftG: number): Partial<RoutesQuestion> => ({ stock: { lots: [LOT], leftG } });
const skeins = (many: number): Partial<RoutesQuestion> => ({
  stock: { lots: [{ ...LOT, skeins: many }], leftG: null },
});

describe('skeinPlan', () => {
  it('O21: without yarn there is no advice', () => {
    expect(advice({ stock: null })).toBeNull();
  });

  it('O21: more yarn never lowers the chance that it lasts, weighed or by its labels', () => {
    for (const amounts of [[20, 60, 120, 250].map(left), [2, 4, 6, 9].map(skeins)]) {
      const chances = amounts.map((each) => advice(each)!.chanceShort);
      expect(chances.every((each, k) => k === 0 || each <= chances[k - 1]!)).toBe(true);
      expect(chances[0]).toBeGreaterThan(chances.at(-1)!);
    }
  });

  it('O21: what is weighed lasts as the planned route says, on the same draws', () => {
    for (const grams of [60, 100, 140]) {
      const question = { ...QUESTION, ...left(grams) };
      const all = routes(question, OPTIONS);
      if (!all.ok) throw new Error(JSON.stringify(all.faults));
      const planned = all.value.routes.find((route) => route.planned);
      // The same columns and the same sums; only the order of adding differs.
      expect(1 - advice(left(grams))!.chanceShort).toBeCloseTo(planned!.chanceOfYarn!, 3);
    }
  });

  it('O21: a stock that cannot be is told by its field', () => {
    const told = skeinPlan({ ...QUESTION, ...left(-5) }, OPTIONS);
    expect(told.ok ? [] : told.faults.map(({ field }) => field)).toEqual(['stock.leftG']);
  });
});
