import { forecast } from '@dryflat/engine/garment';
import { askForecast, EXAMPLES, readRecord, writeRecord } from '@dryflat/record';
import { expect, it } from 'vitest';
import { once } from '../../../../../scripts/lib/once.mjs';
import { keptOf } from './kept-of.ts';

const record = structuredClone(EXAMPLES.find((each) => each.slug === 'yoke-pullover')!.record);
const asked = askForecast(record);
if (!asked.ok) throw new Error('the example cannot be forecast');
const result = once(() => forecast(asked.value, { draws: 500 }));
const kept = once(() => keptOf(result(), 'k1', '2025-03-09'));

it('keeps every measurement in all five states, within a twentieth of a millimetre', () => {
  expect(kept().measurements).toHaveLength(5 * result().measurements.length);
  for (const each of kept().measurements) {
    const range = result().measurements.find(({ id }) => id === each.measurement)!.states[
      each.state
    ];
    // Rounded to a tenth: half of one, and a hair for the arithmetic.
    for (const key of ['p05Mm', 'p50Mm', 'p95Mm'] as const)
      expect(Math.abs(each[key] - range[key])).toBeLessThanOrEqual(0.05 + 1e-9);
  }
});

it('makes a record that reads without a fault', () => {
  record.forecasts.push(kept());
  const read = readRecord(writeRecord(record));
  expect(read.ok && read.value.record.forecasts.at(-1)).toEqual(kept());
});
