import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { forecast } from '../garment/index.ts';
import { mm } from '../units/index.ts';
import { garment } from './check/garments.ts';
import { QUESTION } from './check/questions.ts';
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

it('F25: a body that has grown too long in the wash is mended at its hem before all else', () => {
  const wanted = (landmark: string, min: number, max: number) =>
    ({
      landmark,
      body: null,
      bodyFrom: null,
      kind: 'finished',
      min: mm(min),
      max: mm(max),
    }) as const;
  const tape = (measurement: string, state: 'dried' | 'rewashed', value: number) =>
    ({
      id: `${measurement} ${state}`,
      measurement,
      state,
      value: mm(value),
      span: 'flat',
    }) as const;
  const [first] = found({
    ...QUESTION,
    dried: true,
    progress: ['back', 'front', 'sleeve'].map((piece) => ({ piece, share: 1 })),
    forecast: {
      ...QUESTION.forecast,
      specimens: [],
      wanted: [
        wanted('body-length', 560, 600),
        wanted('sleeve-length', 433, 463),
        wanted('chest', 1000, 1080),
      ],
      measured: [
        tape('body-length', 'dried', 580),
        tape('body-length', 'rewashed', 630),
        tape('chest', 'dried', 520),
        tape('chest', 'rewashed', 521),
      ],
      judgeAt: 'rewashed',
    },
  });
  expect(first!.id).toBe('take-away:hem');
});
