import { findExample, type GarmentRecord, type MatWork } from '@dryflat/record';
import { expect, test } from 'vitest';
import { pinnedAndDried } from './pinned-dried.ts';

const { onMat: _, ...empty } = findExample('waistcoat')!.record;
const chest = empty.pattern.measurements.find(({ landmark }) => landmark === 'chest')!;
const told = (mm: number) => ({
  id: `${mm}`,
  step: 0,
  at: '2031-03-05T10:00:00Z',
  tapeMm: [null, null],
  felt: 'right' as const,
  measured: [{ landmark: 'chest', mm }],
});
const work = { id: 'w', piece: 'front', told: [told(515), told(520)] } as unknown as MatWork;
const record = (dried: { mm: number; span?: 'flat' | 'around' } | null): GarmentRecord => ({
  ...empty,
  pieces: [],
  onMat: [work],
  outcomes: [
    {
      id: 'o',
      washes: 1,
      remark: '',
      measured: dried ? [{ id: 'm', measurement: chest.id, state: 'dried', ...dried }] : [],
    },
  ],
});

test('DR10: the newest tape on the mat stands beside the dried garment laid flat', () => {
  for (const dried of [
    { mm: 505, span: 'flat' as const },
    { mm: 1010, span: 'around' as const },
  ])
    expect(pinnedAndDried(record(dried))).toEqual([
      { key: 'w chest', piece: 'front', landmark: 'chest', pinnedMm: 520, driedMm: 505 },
    ]);
});

test('DR10: nothing is claimed where it was not measured dry, or where flat or around was not said', () => {
  for (const dried of [null, { mm: 505 }])
    expect(pinnedAndDried(record(dried))[0]?.driedMm).toBeNull();
});
