import { readSizeTable } from '@dryflat/engine/garment';
import { emptyRecord, faultsOf, type GarmentRecord, isDoubt, questionsOf } from '@dryflat/record';
import { expect, test } from 'vitest';
import { mergeGauge, mergeReading, newSizes } from './merge-reading.ts';
import {
  cellKey,
  gaugesLeftOut,
  mainGauge,
  NO_MENDS,
  openMisprints,
  readMends,
  readRows,
} from './reading.ts';

const CHEST = 'Finished chest: 34 (38, 42) (46, 50, 54)" / 86 (96, 106) (117, 127, 137) cm';

const fresh = (): GarmentRecord =>
  emptyRecord({ id: 'g', name: 'Garment', kind: 'pullover-set-in' });
let last = 0;
const makeId = (): string => `row-${++last}`;
const take = (draft: GarmentRecord, text: string, mends = NO_MENDS): number => {
  const table = readSizeTable(text, { unit: 'in', kind: draft.kind });
  return mergeReading(draft, table, readRows(table, mends), makeId);
};
const wrong = (draft: GarmentRecord): string[] =>
  faultsOf(draft).flatMap((each) => (isDoubt(each) ? [] : each.code));

test('P5: a printed line becomes six sizes and one row that waits for flat or around', () => {
  const draft = fresh();
  expect(take(draft, CHEST)).toBe(1);
  expect(draft.pattern.sizes).toHaveLength(6);
  expect(draft.pattern.measurements).toMatchObject([
    { landmark: 'chest', values: [863.6, 965.2, 1066.8, 1168.4, 1270, 1371.6] },
  ]);
  expect(draft.pattern.measurements[0]?.span).toBeUndefined();
  expect(wrong(draft)).toEqual(['question-span']);
});

test('P5: the same line again changes nothing, and keeps what the knitter said of the row', () => {
  const draft = fresh();
  take(draft, CHEST);
  draft.pattern.chosen = '2';
  const [row] = draft.pattern.measurements;
  if (row) row.span = 'around';
  const before = structuredClone(draft);
  take(draft, CHEST);
  expect(draft).toEqual(before);
});

test('P5: a second line goes beside the first, by place', () => {
  const draft = fresh();
  take(draft, CHEST);
  take(draft, 'Sleeve length: 17 (17½, 18) (18, 18½, 19) in');
  expect(draft.pattern.sizes).toHaveLength(6);
  expect(draft.pattern.measurements.map(({ landmark }) => landmark)).toEqual([
    'chest',
    'sleeve-length',
  ]);
  expect(wrong(draft)).toEqual(['question-span']);
});

test('P5: sizes with names are matched by name; new ones get a column and empty places', () => {
  const draft = fresh();
  take(draft, 'Size\tS\tM\nChest (in)\t34\t38');
  const more = 'Size\tM\tL\nWaist (in)\t36\t40';
  expect(newSizes(draft.pattern, readSizeTable(more))).toEqual(['L']);
  take(draft, more);
  expect(draft.pattern.sizes).toEqual(['S', 'M', 'L']);
  expect(draft.pattern.measurements.map(({ values }) => values)).toEqual([
    [863.6, 965.2, null],
    [null, 914.4, 1016],
  ]);
});

test('P5: a line about the body stays out unless it is put in', () => {
  const draft = fresh();
  expect(take(draft, 'To fit bust: 32 (36, 40) in')).toBe(0);
  expect(draft.pattern.measurements).toEqual([]);
});

test('P5: a name that says nothing known becomes a place of its own', () => {
  const draft = fresh();
  take(draft, 'Pocket flap: 4 (4, 5) in');
  expect(draft.pattern.measurements).toMatchObject([{ landmark: 'pocket-flap' }]);
});

test('P5: a single size is the one that is knit', () => {
  const draft = fresh();
  take(draft, 'Chest: 40 in');
  expect(draft.pattern.chosen).toBe(draft.pattern.sizes[0]);
});

const forBody = (chestMm: number): GarmentRecord => {
  const draft = fresh();
  draft.wearer.group = 'woman';
  draft.wearer.body = [{ landmark: 'chest', mm: chestMm, from: { kind: 'measured' } }];
  return draft;
};

test('P10: a word such as circumference answers flat or around, but not where its number gives it away', () => {
  const slip = forBody(864);
  take(slip, 'Chest circumference: 19 in');
  expect(slip.pattern.measurements[0]?.span).toBeUndefined();
  expect(questionsOf(slip)).toMatchObject([
    { field: 'pattern.measurements[0].span', likely: 'flat', valueMm: 482.6 },
  ]);
  const sound = forBody(864);
  take(sound, 'Chest circumference: 38 in\nHalf waist: 17 in');
  expect(sound.pattern.measurements.map(({ span }) => span)).toEqual(['around', 'flat']);
  expect(questionsOf(sound)).toEqual([]);
});

test('P10: what the knitter said of a row gives way to a number that only the other fits', () => {
  const draft = forBody(864);
  take(draft, 'Chest circumference: 38 in');
  take(draft, 'Chest circumference: 19 in');
  expect(questionsOf(draft)).toHaveLength(1);
});

test('P10: a length has no flat or around, whatever the words beside it', () => {
  const draft = fresh();
  take(draft, 'Sleeve length: 45 cm, laid flat');
  expect(draft.pattern.measurements[0]).not.toHaveProperty('span');
});

const takeGauge = (draft: GarmentRecord, text: string): void => {
  const gauge = mainGauge(readSizeTable(text, { unit: 'in' }), NO_MENDS);
  if (gauge) mergeGauge(draft.pattern, gauge);
};

test('P11: a gauge is taken over with its state; one that says none is washed, or as it was', () => {
  const draft = fresh();
  takeGauge(draft, 'Gauge 18 sts and 24 rows = 4 in');
  expect(draft.pattern.gauge).toEqual({ stitches: 18, rows: 24, overMm: 101.6, state: 'dried' });
  takeGauge(draft, '20 sts and 14 rows over 2 in before washing');
  expect(draft.pattern.gauge).toEqual({ stitches: 20, rows: 14, overMm: 50.8, state: 'asKnit' });
  takeGauge(draft, '18 sts = 4 in');
  expect(draft.pattern.gauge).toEqual({ stitches: 18, overMm: 101.6, state: 'asKnit' });
  takeGauge(draft, '24 rows = 4 in');
  expect(draft.pattern.gauge).toEqual({ stitches: 18, overMm: 101.6, state: 'asKnit' });
  expect(draft.pattern.measurements).toEqual([]);
});

test('P11: of several gauges the first that is not unwashed is meant, until the knitter says which', () => {
  const table = readSizeTable(
    'Unblocked: 17 sts = 4 in\nBlocked: 18 sts = 4 in\nCables: 22 sts = 4 in',
  );
  const chosen = (gauge?: number) =>
    mainGauge(table, { ...NO_MENDS, ...(gauge !== undefined && { gauge }) })?.stitches.count;
  expect([chosen(), chosen(0), chosen(2), chosen(7)]).toEqual([18, 17, 22, 18]);
});

test('P11: of several gauges in a line those that stay out are told as they stand', () => {
  const text = '20 sts = 10 cm in stockinette, 22 sts = 10 cm in rib';
  const out = (gauge: number) => gaugesLeftOut(text, readSizeTable(text), { ...NO_MENDS, gauge });
  expect(out(0)).toEqual(['22 sts = 10 cm in rib']);
  expect(out(1)).toEqual(['20 sts = 10 cm in stockinette']);
});

test('P6: a misprint stays open until a value is decided, and that value is what is taken over', () => {
  const draft = fresh();
  const text = CHEST.replace('117', '171');
  const table = readSizeTable(text, { unit: 'in' });
  const rows = readRows(table, NO_MENDS);
  expect(openMisprints(table, rows, NO_MENDS).map(({ size }) => size)).toEqual([3]);
  const key = cellKey(rows[0]?.key ?? '', 3, rows[0]?.row.cells[3]);
  const mends = { ...NO_MENDS, values: { [key]: 1170 } };
  expect(openMisprints(table, readRows(table, mends), mends)).toEqual([]);
  take(draft, text, mends);
  expect(draft.pattern.measurements[0]?.values[3]).toBe(1170);
});

test('P6: a mend falls away when the text under it changes', () => {
  const first = readSizeTable('Chest: 34 in');
  const [row] = readRows(first, NO_MENDS);
  const mends = { ...NO_MENDS, values: { [cellKey(row?.key ?? '', 0, row?.row.cells[0])]: 900 } };
  expect(readRows(first, mends)[0]?.values).toEqual([900]);
  expect(readRows(readSizeTable('Chest: 36 in'), mends)[0]?.values).toEqual([914.4]);
});

test('P6: kept mends that cannot be read count as none', () => {
  expect(readMends('{')).toEqual(NO_MENDS);
  expect(readMends(null)).toEqual(NO_MENDS);
});
