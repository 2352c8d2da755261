import { expect, test } from 'vitest';
import type { ForecastNow } from '../worker/forecast-context.tsx';
import { forecastLine } from './forecast-line.ts';

const lengths = { range: (low: number, high: number) => `${low}–${high} mm` };
const now = (over: object): ForecastNow =>
  ({
    forecast: null,
    sizes: null,
    steps: [],
    pending: false,
    faults: [],
    broken: null,
    ...over,
  }) as ForecastNow;
const forecast = (chanceAllFit: number | null) => ({
  chanceAllFit,
  judgedAt: 'worn',
  measurements: [
    {
      name: 'Chest',
      states: { dried: { p05Mm: 1, p95Mm: 2 }, worn: { p05Mm: 970, p95Mm: 1020 } },
    },
  ],
});

test('S3: the line gives the chance and the first measurement in the state that is judged', () => {
  expect(forecastLine(now({ forecast: forecast(0.724) }), lengths)).toEqual({
    main: 'Fits: about 7 in 10',
    more: 'Chest 970–1020 mm',
  });
});

test('S3: without a wanted fit the measurement itself is the message', () => {
  expect(forecastLine(now({ forecast: forecast(null) }), lengths).main).toBe('Chest 970–1020 mm');
});

test('S4: what stands in the way is counted, and a failure is not hidden', () => {
  expect(forecastLine(now({ faults: [{}, {}] }), lengths).more).toBe('2 to mend or fill in');
  expect(forecastLine(now({ broken: 'x' }), lengths).main).toBe('No forecast');
});

test('S3: without a size the line asks for it, and says which fits best where a fit is wanted', () => {
  const each = (...chances: (number | null)[]) => ({
    sizes: chances.map((chanceAllFit, k) => ({ chosenSize: `${k + 1}`, chanceAllFit })),
    best: chances[1] === null ? null : '2',
  });
  const faults = [{}];
  expect(forecastLine(now({ sizes: each(0.1, 0.724, 0.2), faults }), lengths)).toEqual({
    main: 'Which size?',
    more: 'size 2 fits best: about 7 in 10',
  });
  expect(forecastLine(now({ sizes: each(null, null), faults }), lengths).more).toBe(
    '2 to choose from',
  );
});
