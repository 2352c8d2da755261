import { expect, test } from 'vitest';
import { QUESTION } from './check/questions.ts';
import { paceForecast } from './pace/index.ts';
import { pacePlan } from './plan.ts';
import { routes } from './routes.ts';
import type { RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 3, draws: 2000 } as const;
const planned = (change: Partial<RoutesQuestion> = {}) => {
  const plan = pacePlan({ ...QUESTION, ...change }, OPTIONS);
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  return plan.value;
};

test('O20: the plan’s pace is the planned route’s work', () => {
  const told = paceForecast(planned(), OPTIONS);
  const found = routes(QUESTION, OPTIONS);
  const lay = found.ok ? found.value.routes.find(({ planned: is }) => is)! : null;
  const hours = told.ok ? told.value.hours : null;
  // The route counts some 0.5 h of washing and laying out beside it; both are drawn alike.
  expect(lay!.hours.total.p50 - hours!.p50).toBeGreaterThan(0.2);
  expect(lay!.hours.total.p50 - hours!.p50).toBeLessThan(1);
  const back = planned().parts.find(({ name }) => name === 'back');
  expect(back).toBeUndefined();
});

test('O20: yarn waits where it may run out, and more of it waits less', () => {
  const shares = [2, 6, 12].map(
    (skeins) =>
      planned({
        stock: { lots: [{ dyeLot: '1', skeins, gramsEach: 50, metresEach: 100 }], leftG: null },
      }).yarn!.heldOverNeeded.median,
  );
  expect(shares[0]!).toBeLessThan(shares[1]!);
  expect(shares[1]!).toBeLessThan(shares[2]!);
  expect(planned({ stock: null }).yarn).toBeNull();
});

test('O20: what is finished and dried leaves nothing to do', () => {
  const all = ['front', 'back', 'sleeve'].map((piece) => ({ piece, share: 1 }));
  const { parts, dryingHours, finishing, yarn } = planned({ progress: all, dried: true });
  expect({ parts, dryingHours, finishing, yarn }).toEqual({
    parts: [],
    dryingHours: null,
    finishing: null,
    yarn: null,
  });
});
