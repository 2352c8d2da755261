import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { forecast } from '../garment/index.ts';
import { garment } from './check/garments.ts';
import { routes } from './routes.ts';
import type { Route, RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 5, draws: 400 } as const;

const found = (question: RoutesQuestion): readonly Route[] => {
  const result = routes(question, OPTIONS);
  if (!result.ok) throw new Error('it cannot be asked');
  return result.value.routes;
};

it('O27: each place that is likelier to miss than not is told, or how many more are', () => {
  let more = 0;
  fc.assert(
    fc.property(garment, (question) => {
      for (const { fit, reasons } of found(question)) {
        const missing = fit.filter(({ chance }) => chance < 0.5);
        const named = missing.filter(({ landmark }) =>
          reasons[0]!.includes(`the ${landmark.replaceAll('-', ' ')}, `),
        );
        const rest = Number(/(\d+) more miss/.exec(reasons[0] ?? '')?.[1] ?? 0);
        expect(named.length + rest).toBe(missing.length);
        more += rest;
      }
    }),
    { numRuns: draws(20, 300), seed: 3 },
  );
  expect(more).toBeGreaterThan(0);
});

it('O28: no mend changes less than a tape tells', () => {
  fc.assert(
    fc.property(garment, (question) => {
      const planned = forecast(question.forecast, OPTIONS);
      const mends = found(question).filter(({ kind }) => /^(rip|add|take)/.test(kind));
      for (const { measurements } of mends) {
        const moved = measurements.map(({ id, states }) => {
          const was = planned.measurements.find((each) => each.id === id)!.states;
          return Math.max(
            ...(['dried', 'worn', 'rewashed'] as const).map((state) =>
              Math.abs(states[state].p50Mm - was[state].p50Mm),
            ),
          );
        });
        // A tape on a garment errs by 3 mm and more.
        expect(Math.max(...moved)).toBeGreaterThan(2.9);
      }
    }),
    { numRuns: draws(40, 400), seed: 9 },
  );
});
