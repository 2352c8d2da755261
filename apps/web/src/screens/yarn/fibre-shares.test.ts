import { FIBRES } from '@dryflat/engine/textile';
import { expect, test } from 'vitest';
import { addFibre, freeFibres, missingShare, readShare } from './fibre-shares.ts';

test('P8: a second fibre fills the blend up to 100 %', () => {
  const fibres = [{ fibre: 'wool' as const, percent: 80 }];
  addFibre(fibres as never, 'nylon');
  expect(fibres).toEqual([
    { fibre: 'wool', percent: 80 },
    { fibre: 'nylon', percent: 20 },
  ]);
  expect(missingShare(fibres)).toBe(0);
  expect(freeFibres(fibres)).toHaveLength(FIBRES.length - 2);
});

test('P8: too much is a negative rest', () => {
  expect(
    missingShare([
      { fibre: 'wool', percent: 80 },
      { fibre: 'silk', percent: 33.4 },
    ]),
  ).toBe(-13.4);
});

test.each([
  ['80', 80],
  ['80 %', 80],
  ['12,5', 12.5],
  ['12.5%', 12.5],
])('P8: the share %j reads as %d', (text, value) => {
  expect(readShare(text, 'wool')).toEqual({ ok: true, value });
});

test.each([
  ['125', 'share-out-of-range'],
  ['0', 'count-out-of-range'],
  ['half', 'count-unreadable'],
])('P8: %j is no share: %s', (text, code) => {
  expect(readShare(text, 'wool')).toMatchObject({ ok: false, faults: [{ code, field: 'wool' }] });
});
