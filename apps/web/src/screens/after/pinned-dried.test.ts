import { findExample, type GarmentRecord, type MatWork } from '@dryflat/record';
import { expect, test } from 'vitest';
import { pinnedAndDried } from './pinned-dried.ts';

const { onMat: _, ...empty } = findExample('waistcoat')!.record;
const chest = empty.pattern.measurements.find(({ landmark }) => landmark === 'chest')!;
const told = (mm: number) => ({ measured: [{ landmark: 'chest', mm }] });
const lies = (dryLowMm: number, dryHighMm: number) => ({
  reaches: [{ landmark: 'chest', targetMm: 515, pinnedMm: 518, dryLowMm, dryHighMm }],
});
const record = (
  dried: { mm: number; span?: 'flat' | 'around' } | null,
  work: object,
): GarmentRecord => ({
  ...empty,
  pieces: [],
  onMat: [{ id: 'w', piece: 'front', copy: '', told: [], ...work } as unknown as MatWork],
  outcomes: [
    {
      id: 'o',
      washes: 1,
      remark: '',
      measured: dried ? [{ id: 'm', measurement: chest.id, state: 'dried', ...dried }] : [],
    },
  ],
});

test('DR10: the newest tape on the mat, what was foretold and the dried piece stand side by side', () => {
  for (const dried of [
    { mm: 505, span: 'flat' as const },
    { mm: 1010, span: 'around' as const },
  ])
    expect(
      pinnedAndDried(record(dried, { told: [told(515), told(520)], lies: lies(500, 510) })),
    ).toEqual([
      {
        key: 'w chest',
        piece: 'front',
        landmark: 'chest',
        pinnedMm: 520,
        byTape: true,
        foretold: { lowMm: 500, highMm: 510 },
        driedMm: 505,
        inside: true,
      },
    ]);
});

test('DR10: a piece as wide as the whole girth is held against all of it', () => {
  const [row] = pinnedAndDried(record({ mm: 505, span: 'flat' }, { told: [told(1030)] }));
  expect(row).toMatchObject({ driedMm: 1010, foretold: null, inside: null });
});

test('DR10: without a tape the plan says how it lay; out of its range is said', () => {
  const [row] = pinnedAndDried(record({ mm: 490, span: 'flat' }, { lies: lies(500, 510) }));
  expect(row).toMatchObject({ pinnedMm: 518, byTape: false, driedMm: 490, inside: false });
});

test('DR10: nothing is claimed where it was not measured dry, or flat or around was not said', () => {
  for (const dried of [null, { mm: 505 }, { mm: 2000, span: 'around' as const }])
    expect(pinnedAndDried(record(dried, { lies: lies(500, 510) }))[0]).toMatchObject({
      driedMm: null,
      inside: null,
    });
});
