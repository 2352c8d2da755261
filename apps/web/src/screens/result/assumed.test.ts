import type { GarmentRecord } from '@dryflat/record';
import { expect, it } from 'vitest';
import { assumedOf } from './assumed.ts';

const silent = { plan: {} } as GarmentRecord;
const said = {
  plan: { weights: { fit: 1, time: 1, yarn: 1 } },
  pace: { log: [], hours: [], away: [] },
} as unknown as GarmentRecord;

it('PC4: what is assumed is said without the names of fields, by part', () => {
  expect(assumedOf(silent, 'pace')).toHaveLength(2);
  expect(assumedOf(silent, 'plan')).toHaveLength(1);
  for (const each of [...assumedOf(silent, 'pace'), ...assumedOf(silent, 'plan')])
    expect(each).toMatch(/^[^()]+\.$/);
});

it('PC4: what was said is not assumed', () => {
  expect(assumedOf(said, 'pace')).toEqual([]);
  expect(assumedOf(said, 'plan')).toEqual([]);
});
