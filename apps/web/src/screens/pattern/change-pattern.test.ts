import { emptyRecord, faultsOf, type GarmentRecord, isDoubt } from '@dryflat/record';
import { expect, test } from 'vitest';
import {
  addRow,
  addSize,
  freeSize,
  hangingOn,
  mayGoAround,
  ownLandmark,
  removeRow,
  removeSize,
  renameSize,
  rowOf,
  setCount,
  setLandmark,
} from './change-pattern.ts';

const withChest = (): GarmentRecord => {
  const draft = emptyRecord({ id: 'g', name: 'Garment', kind: 'pullover-set-in' });
  addRow(draft, { id: 'c', name: 'Chest', landmark: 'chest' });
  addSize(draft.pattern, '2');
  rowOf(draft, 'c').values = [900, 1000];
  rowOf(draft, 'c').span = 'around';
  return draft;
};

test('P4: the first row brings a size that is the one being knit', () => {
  const draft = withChest();
  expect(draft.pattern.sizes).toEqual(['One size', '2']);
  expect(draft.pattern.chosen).toBe('One size');
  expect(rowOf(draft, 'c').worked).toBe('counted');
});

test('P4: the choice follows the name of its size, and is open again when the size goes', () => {
  const draft = withChest();
  renameSize(draft.pattern, 0, 'S');
  expect(draft.pattern.chosen).toBe('S');
  removeSize(draft.pattern, 0);
  expect(draft.pattern).toMatchObject({ sizes: ['2'], measurements: [{ values: [1000] }] });
  expect(draft.pattern.chosen).toBeUndefined();
});

test('P4: a free name is none of those taken', () => {
  expect(freeSize(['1', '3'])).toBe('4');
  expect(freeSize([])).toBe('1');
});

test('P4: counts are kept per size and vanish with the last of them', () => {
  const draft = withChest();
  const row = rowOf(draft, 'c');
  setCount(row, 1, 208);
  expect(row.counts).toEqual([null, 208]);
  setCount(row, 1, null);
  expect(row.counts).toBeUndefined();
});

test('P4: a row that moves to a length loses flat and around, and its faults', () => {
  const draft = withChest();
  setLandmark(rowOf(draft, 'c'), 'sleeve-length');
  expect(rowOf(draft, 'c').span).toBeUndefined();
  expect(mayGoAround(rowOf(draft, 'c'))).toBe(false);
  setLandmark(rowOf(draft, 'c'), 'custom');
  expect(rowOf(draft, 'c')).toMatchObject({ landmark: 'chest-own', direction: 'length' });
  expect(faultsOf(draft).filter((each) => !isDoubt(each))).toEqual([]);
});

test('P4: an own place never takes the name of a known one', () => {
  expect(ownLandmark('Chest')).toBe('chest-own');
  expect(ownLandmark('Front band!')).toBe('front-band');
  expect(ownLandmark('***')).toBe('own-place');
  expect(ownLandmark('custom')).toBe('own-place');
});

test('P4: what hangs on a row goes with it', () => {
  const draft = withChest();
  draft.plan.pinTo.push({ measurement: 'c', mm: 950, span: 'around' });
  draft.pieces.push({
    id: 'p',
    name: 'Back',
    measured: [{ id: 'm', measurement: 'c', state: 'dried', mm: 440, span: 'flat' }],
  });
  expect(hangingOn(draft, 'c')).toBe(2);
  removeRow(draft, 'c');
  expect(hangingOn(draft, 'c')).toBe(0);
  expect(draft.pieces[0]?.measured).toEqual([]);
});
