import type { SizeAtNeedle } from '@dryflat/engine/routes';
import { expect, test } from 'vitest';
import { needleName, placesOf, sizeTable } from './size-table.ts';

const landmark = (name: string, wanted: boolean) => ({
  landmark: name,
  finishedMm: { p05Mm: 1, p50Mm: 2, p95Mm: 3 },
  wantedMm: wanted ? { min: 1, max: 2 } : null,
  chance: null,
});
const at = (
  needleMm: number | null,
  size: string,
  lengthsOf: string,
  chanceAllFit: number | null,
) =>
  ({
    needleMm,
    size,
    lengthsOf,
    chanceAllFit,
    landmarks: [landmark('hem', false), landmark('chest', true)],
  }) as unknown as SizeAtNeedle;
const SIZES = [
  at(3.5, '1', '1', 0.1),
  at(3.5, '2', '1', 0.3),
  at(3.5, '2', '2', 0.2),
  at(4, '1', '1', null),
  at(4, '2', '2', 0.5),
];

test('RT6: every size has its chance on every needle, and a blend where there is one', () => {
  expect(sizeTable(SIZES)).toEqual({
    needles: [3.5, 4],
    rows: [
      { name: 'Size 1', chances: [0.1, null] },
      { name: 'Size 2', chances: [0.2, 0.5] },
      { name: 'Stitches of 2, lengths of 1', chances: [0.3, null] },
    ],
  });
});

test('RT6: needles are named in millimetres, places that are wanted come first', () => {
  expect([3.75, 4, null].map(needleName)).toEqual(['3.75 mm', '4 mm', 'Needle in use']);
  expect(placesOf(SIZES)).toEqual(['chest', 'hem']);
});
