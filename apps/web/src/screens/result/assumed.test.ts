import { emptyRecord, type GarmentRecord } from '@dryflat/record';
import { expect, it } from 'vitest';
import { assumedOf } from './assumed.ts';

const empty = emptyRecord({ id: 'vest', name: 'A vest', kind: 'vest' });
const silent: GarmentRecord = { ...empty, finished: { on: '2031-01-07', remark: '' } };
const said: GarmentRecord = {
  ...empty,
  plan: { ...empty.plan, weights: { fit: 1, time: 1, yarn: 1 } },
  progress: [],
  pace: { log: [], hours: [], away: [] },
};

it('PC4: what is assumed is said without the names of fields, by part', () => {
  expect(assumedOf(silent, 'pace')).toHaveLength(2);
  expect(assumedOf(silent, 'plan')).toHaveLength(1);
  expect(assumedOf(silent, 'progress')).toHaveLength(1);
  for (const part of ['pace', 'plan', 'progress'] as const)
    for (const each of assumedOf(silent, part)) expect(each).toMatch(/^[^()]+\.$/);
});

it('PC4: what was said is not assumed', () => {
  expect(assumedOf(said, 'pace')).toEqual([]);
  expect(assumedOf(said, 'plan')).toEqual([]);
  expect(assumedOf(said, 'progress')).toEqual([]);
});
