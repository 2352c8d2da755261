import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { garment } from './check/garments.ts';
import { QUESTION } from './check/questions.ts';
import { stock } from './check/stocks.ts';
import { contradictedYarn } from './check/yarn-statements.ts';
import { paceForecast } from './pace/index.ts';
import { pacePlan } from './plan.ts';
import { routes } from './routes.ts';
import { skeinPlan } from './skein-plan.ts';
import type { RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 5, draws: 400 } as const;

const said = (question: RoutesQuestion) => {
  const [result, plan, pace] = [
    routes(question, OPTIONS),
    skeinPlan(question, OPTIONS),
    pacePlan(question, OPTIONS),
  ];
  if (!result.ok || !plan.ok || !pace.ok || plan.value === null) throw new Error('not asked');
  const days = paceForecast(pace.value, OPTIONS);
  if (!days.ok) throw new Error('no days');
  const planned = result.value.routes.find((route) => route.planned)!;
  return { plan: plan.value, planned, pace: days.value };
};

const LOT = { dyeLot: '4711', skeins: 8, gramsEach: 50, metresEach: 100 };

describe('what is said of yarn', () => {
  it('O26: what is needed, at hand and left over is one account, whatever is bought, weighed and knit', () => {
    fc.assert(
      fc.property(garment, stock, fc.boolean(), (question, held, progressSaid) => {
        expect(contradictedYarn(said({ ...question, stock: held, progressSaid }))).toEqual([]);
      }),
      { numRuns: draws(30, 400), seed: 9 },
    );
  });

  it('O26: a lot suffices by what is left of it, not by its label', () => {
    // 8 skeins were bought; 30 g are left by the scale, and half a garment is still to knit.
    const { plan } = said({ ...QUESTION, stock: { lots: [LOT], leftG: 30 } });
    expect(plan.leftoverM.p95).toBeLessThan(0);
    expect(plan.buy).toBeGreaterThan(0);
    expect(plan.lots).toMatchObject({ kind: 'short', alone: [] });
    expect(plan.lots.sentence).not.toMatch(/suffices/);
  });

  it('O26: of lots that were weighed together nobody says which suffices', () => {
    const two = [LOT, { ...LOT, dyeLot: '4712' }];
    const { plan } = said({ ...QUESTION, stock: { lots: two, leftG: 600 } });
    expect(plan.lots).toMatchObject({ kind: 'untold', alone: [] });
  });

  it('O26: what is knit is taken off what was bought, and off what is needed', () => {
    const of = (progress: RoutesQuestion['progress']) =>
      said({ ...QUESTION, progress, stock: { lots: [LOT], leftG: null } }).plan;
    const [none, half] = [of([]), of([{ piece: 'back', share: 1 }])];
    expect(none.knit).toBeNull();
    const knit = half.knit!.metres.p50;
    expect(knit).toBeGreaterThan(100);
    expect(Math.abs(none.held.metres.p50 - half.held.metres.p50 - knit)).toBeLessThan(0.05 * knit);
    // Its cast-on and ends are knit with it: a tenth more.
    expect((none.needed.metres.p50 - half.needed.metres.p50) / knit).toBeGreaterThan(0.95);
    expect((none.needed.metres.p50 - half.needed.metres.p50) / knit).toBeLessThan(1.1);
  });

  it('O26: what is left by the scale is not set against a whole garment while nobody said how much is knit', () => {
    const unsaid = { ...QUESTION, progress: [], progressSaid: false };
    const weighed = said({ ...unsaid, stock: { lots: [LOT], leftG: 30 } }).plan;
    const bought = said({ ...unsaid, stock: { lots: [LOT], leftG: null } }).plan;
    expect(weighed.asksProgress).toBe(true);
    expect(bought.asksProgress).toBe(false);
    expect(weighed.chanceShort).toBe(bought.chanceShort);
    // Without any label the scale is all that there is.
    const alone = said({ ...unsaid, stock: { lots: [], leftG: 30 } }).plan;
    expect(alone).toMatchObject({ asksProgress: true, chanceShort: 1 });
  });

  it('O26: where all is knit and yarn to sew is missing, the pace says so too', () => {
    const progress = ['front', 'back', 'sleeve'].map((piece) => ({ piece, share: 1 }));
    const told = said({ ...QUESTION, progress, stock: { lots: [LOT], leftG: 0 } });
    expect(told.plan.chanceShort).toBe(1);
    expect(contradictedYarn(told)).toEqual([]);
    expect(told.pace.notices.map(({ code }) => code)).toContain('yarn-short');
  });
});
