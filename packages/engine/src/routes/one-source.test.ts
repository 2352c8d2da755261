import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { forecast, forecastEach, type SizeFit } from '../garment/index.ts';
import { mm } from '../units/index.ts';
import { garment } from './check/garments.ts';
import { QUESTION } from './check/questions.ts';
import { contradictedSizes } from './check/size-statements.ts';
import { routes } from './routes.ts';
import { sizeByNeedle } from './size-by-needle.ts';
import type { RoutesQuestion } from './types.ts';

const OPTIONS = { seed: 5, draws: 400 } as const;

/** The same to the draw; medians, which a ratio of sizes brings over, to a rounding. */
const near = (mm: number) => expect.closeTo(mm, 6) as number;
const alike = (fit: SizeFit) => ({
  ...fit,
  landmarks: fit.landmarks.map((each) => ({
    ...each,
    p50Mm: near(each.p50Mm),
    miss: { ...each.miss, byMm: near(each.miss.byMm) },
  })),
});

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

  it('O25: a size has the chances before it is chosen that it has once it is', () => {
    const pins = fc.array(fc.double({ min: 0.9, max: 1.2, noNaN: true }), { maxLength: 3 });
    fc.assert(
      fc.property(garment, pins, ({ forecast: asked }, offs) => {
        const pinTo = offs
          .slice(0, asked.measurements.length)
          .map((off, k) => ({ measurement: asked.measurements[k]!.id, off, k }))
          .map(({ off, k, measurement }) => {
            return { measurement, value: mm(off * asked.measurements[k]!.values[1]!) };
          });
        const afresh = { ...asked, pinTo, measured: [] };
        const every = asked.sizes.map((_, chosen) => ({ ...afresh, chosen }));
        const { sizes: chosen } = forecastEach(every, OPTIONS);
        for (const { sizes } of chosen) expect(sizes).toEqual(chosen[0]!.sizes.map(alike));
        if (asked.wanted.length === 0) return;
        expect(chosen[0]!.sizes.map(({ size, chanceAll }) => [size, chanceAll])).toEqual(
          chosen.map(({ chosenSize, chanceAllFit }) => [chosenSize, chanceAllFit]),
        );
      }),
      { numRuns: draws(60, 600), seed: 11 },
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
