import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { forecast } from '../garment/index.ts';
import { garment } from './check/garments.ts';
import { QUESTION } from './check/questions.ts';
import { contradictedSizes } from './check/size-statements.ts';
import { routes } from './routes.ts';
import { sizeByNeedle } from './size-by-needle.ts';
import type { RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 5, draws: 400 } as const;

const contradicted = (question: RoutesQuestion): string[] => {
  const [result, table] = [routes(question, OPTIONS), sizeByNeedle(question, OPTIONS)];
  if (!result.ok || !table.ok) throw new Error('it cannot be asked');
  return contradictedSizes({
    needleMm: question.forecast.needle,
    sizes: question.forecast.sizes,
    forecast: forecast(question.forecast, OPTIONS),
    result: result.value,
    table: table.value,
  });
};

describe('what is said of sizes and needles', () => {
  it('O25: is the same in the forecast, its advice, the routes and the table', () => {
    fc.assert(
      fc.property(garment, (question) => {
        expect(contradicted(question)).toEqual([]);
      }),
      { numRuns: draws(30, 400), seed: 7 },
    );
  });

  it('O25: also where the next needle was swatched', () => {
    const [swatch] = QUESTION.forecast.specimens;
    const thicker = {
      ...swatch!,
      id: 'thicker',
      needle: 4.5 as NonNullable<RoutesQuestion['forecast']['needle']>,
      readings: swatch!.readings.map((r) =>
        r.kind === 'count' ? { ...r, count: 0.9 * r.count } : r,
      ),
    };
    const forecastOf = { ...QUESTION.forecast, specimens: [swatch!, thicker] };
    expect(contradicted({ ...QUESTION, forecast: forecastOf })).toEqual([]);
    const { advice } = forecast(forecastOf, OPTIONS);
    expect(advice.needles.map(({ way, from }) => [way, from])).toEqual([
      ['smaller', 'model'],
      ['own', 'evidence'],
      ['larger', 'evidence'],
    ]);
  });

  it('O25: of one size nothing is compared with others', () => {
    const one = {
      ...QUESTION.forecast,
      sizes: ['One size'],
      chosen: 0,
      measurements: QUESTION.forecast.measurements.map((m) => ({
        ...m,
        values: [m.values[3]!],
        counts: [m.counts[3]!],
      })),
    };
    const { sentence } = forecast(one, OPTIONS).advice;
    expect(sentence).toMatch(/^All wanted measurements come out in range with /);
    expect(sentence).not.toMatch(/fits best|One size/);
    expect(contradicted({ ...QUESTION, forecast: one })).toEqual([]);
  });
});
