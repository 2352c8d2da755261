import { mm, parseCountOver } from '@dryflat/engine/units';
import { expect, it } from 'vitest';
import { readingsOf } from './counted-readings.ts';

const read = (text: string, place = '') => {
  const parsed = parseCountOver(text, { field: 'Counted', bare: 'stitches', over: mm(100) });
  if (!parsed.ok) throw new Error(parsed.faults[0]?.problem);
  let id = 0;
  return readingsOf(parsed.value, { state: 'dried', read: 'flat', place }, () => `r${++id}`);
};

it.each([
  ['21½ over 10 cm', 21.5, 100],
  ['21,5 over 10cm', 21.5, 100],
  ['22', 22, 100],
  ['20 over 4 in', 20, 101.6],
])('takes %s', (text, count, overMm) => {
  const [reading, ...more] = read(text);
  expect(more).toEqual([]);
  expect(reading).toMatchObject({ direction: 'width', count, state: 'dried', read: 'flat' });
  expect(reading?.overMm).toBeCloseTo(overMm, 9);
  expect(reading).not.toHaveProperty('place');
});

it('makes two readings of a line with stitches and rows', () => {
  expect(read('20 sts and 28 rows over 10 cm', 'hem')).toMatchObject([
    { id: 'r1', direction: 'width', count: 20, place: 'hem' },
    { id: 'r2', direction: 'length', count: 28, place: 'hem' },
  ]);
});
