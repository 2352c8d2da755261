import type { CountReading, Reading, Specimen } from '@dryflat/record';
import { describe, expect, it } from 'vitest';
import { gridRows, halfStitchPercent, statesOf } from './grid-rows.ts';

const count = (id: string, more: Partial<CountReading> = {}): CountReading => ({
  kind: 'count',
  id,
  direction: 'width',
  count: 20,
  overMm: 100,
  state: 'asKnit',
  read: 'flat',
  ...more,
});

describe('rows of readings', () => {
  it('puts before and after the wash of one place side by side', () => {
    const rows = gridRows([count('a'), count('b', { state: 'dried', count: 19 })]);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.id).toBe('a');
    expect(rows[0]?.cells.asKnit?.id).toBe('a');
    expect(rows[0]?.cells.dried?.id).toBe('b');
  });

  it.each<[string, Partial<CountReading>]>([
    ['another place', { place: 'hem' }],
    ['another length', { overMm: 101.6 }],
    ['the other direction', { direction: 'length' }],
    ['a reading while pulling', { read: 'stretched' }],
  ])('keeps %s apart', (_, other) => {
    expect(gridRows([count('a'), count('b', { state: 'dried', ...other })])).toHaveLength(2);
  });

  it('opens a second row for a second reading of one state, and fills both', () => {
    const rows = gridRows([
      count('a'),
      count('b'),
      count('c', { state: 'dried' }),
      count('d', { state: 'dried' }),
    ]);
    expect(rows.map((row) => [row.cells.asKnit?.id, row.cells.dried?.id])).toEqual([
      ['a', 'c'],
      ['b', 'd'],
    ]);
  });

  it('leaves hang weights and pinned strips to their own list', () => {
    const set: Reading = {
      kind: 'set',
      id: 's',
      direction: 'width',
      restMm: 100,
      pinnedMm: 120,
      driedMm: 110,
    };
    expect(gridRows([set])).toEqual([]);
  });
});

describe('states of a specimen', () => {
  const specimen = (washed: Specimen['washed'], readings: Reading[]): Specimen => ({
    id: 's',
    name: 'Swatch',
    kind: 'swatch',
    stitch: 'stockinette',
    workedAsGarment: true,
    washed,
    readings,
  });

  it('offers only as knit until it was washed', () => {
    expect(statesOf(specimen('not', []))).toEqual(['asKnit']);
    expect(statesOf(specimen('as-garment', []))).toEqual(['asKnit', 'dried']);
  });

  it('never hides a state that was read', () => {
    expect(statesOf(specimen('not', [count('a', { state: 'rewashed' })]))).toEqual([
      'asKnit',
      'rewashed',
    ]);
  });
});

it('half a stitch in 20 is 2.5 %', () => {
  expect(halfStitchPercent(20)).toBe(2.5);
});
