import type { Measured } from '@dryflat/record';
import { expect, it } from 'vitest';
import { draftedRows, tapeRows, withPending } from './tape-rows.ts';

const tape = (id: string, measurement: string, state: Measured['state']): Measured => ({
  id,
  measurement,
  state,
  mm: 500,
});

it('puts the states of one place side by side, and a second reading of a state below', () => {
  const rows = tapeRows([
    tape('a', 'chest', 'asKnit'),
    tape('b', 'length', 'asKnit'),
    tape('c', 'chest', 'dried'),
    tape('d', 'chest', 'dried'),
  ]);
  expect(
    rows.map((row) => [row.measurement, row.nth, row.cells.asKnit?.id, row.cells.dried?.id]),
  ).toEqual([
    ['chest', 0, 'a', 'c'],
    ['length', 0, 'b', undefined],
    ['chest', 1, undefined, 'd'],
  ]);
});

it('adds an empty row once, and none for a place that has one', () => {
  const rows = withPending(tapeRows([tape('a', 'chest', 'dried')]), ['chest', 'waist', 'waist']);
  expect(rows.map(({ measurement }) => measurement)).toEqual(['chest', 'waist']);
});

it('finds rows with unusable text again', () => {
  const drafts = ['pieces/p1/rows/waist/dried', 'pieces/p2/rows/hip/dried', 'pieces/p1/m/mm'];
  expect(draftedRows(drafts, 'pieces/p1')).toEqual(['waist']);
});
