import { expect, test } from 'vitest';
import { meanOf, sdOf } from '../stats/index.ts';
import { mm } from '../units/index.ts';
import { type FabricQuestion, pitchIn } from './fabric-model.ts';
import { fabricModel, fabricPosterior, HAND_CORRELATION, UNSWATCHED_SD } from './gauge-model.ts';
import { countSd, PLACE_SD } from './reading-error.ts';
import type { CountReading, Specimen } from './specimen.ts';
import { DRIFT_SD } from './specimen-observations.ts';
import { handPull, stretchConflicts } from './stretched-reading.ts';

const BARE: FabricQuestion = {
  fibres: [{ fibre: 'wool', share: 1 }],
  treatment: 'untreated',
  stitch: 'stockinette',
  washing: 'by-hand',
  weightClass: null,
  metresPer100g: null,
  needle: null,
  patternNeedle: null,
  patternGauge: { stitch: mm(5), row: mm(3.6), state: 'asKnit' },
  specimens: [],
};

const count = (id: string, change: Partial<CountReading> = {}): CountReading => ({
  kind: 'count',
  id,
  direction: 'width',
  count: 18,
  over: mm(100),
  state: 'asKnit',
  read: 'flat',
  place: id,
  ...change,
});

const swatch = (readings: readonly CountReading[], change: Partial<Specimen> = {}): Specimen => ({
  id: 's',
  name: 'Swatch',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: mm(160),
  height: mm(160),
  readings,
  ...change,
});

const pitch = (
  question: FabricQuestion,
  state: 'asKnit' | 'dried' = 'asKnit',
  direction: 'width' | 'length' = 'width',
) => {
  const model = fabricModel(question);
  const post = fabricPosterior(model);
  const form = pitchIn(model, direction, state);
  return { mean: meanOf(post, form), sd: sdOf(post, form) };
};

test('K15: without a swatch the gauge is the pattern’s, within the stated spread', () => {
  const { mean, sd } = pitch(BARE);
  expect(mean).toBeCloseTo(Math.log(5), 12);
  expect(sd).toBeCloseTo(UNSWATCHED_SD, 12);
});

test('K15: a pattern of stitches alone gives the width; its rows are those of plain knit, unsure of it', () => {
  const half: FabricQuestion = {
    ...BARE,
    patternGauge: { stitch: mm(5), row: null, state: 'asKnit' },
  };
  expect(pitch(half)).toEqual(pitch(BARE));
  const rows = pitch(half, 'asKnit', 'length');
  // Munden 1959, dry-relaxed plain knit: courses 5.0/l, wales 3.8/l, so a row is 0.76 of a stitch.
  expect(Math.exp(rows.mean)).toBeCloseTo(5 * 0.76, 9);
  expect(rows.sd).toBeGreaterThan(pitch(BARE, 'asKnit', 'length').sd);
  expect(pitch({ ...half, stitch: 'lace' }, 'asKnit', 'length').sd).toBeGreaterThan(rows.sd);
  expect(fabricModel(half).priors[0]?.text).toContain('It gives no rows: 1.32 to a stitch');
});

test('K16: one count meets the pattern’s prior as two normals do', () => {
  // Precision-weighted mean (Gelman et al. 2013, eq. 2.12), worked here by hand.
  const reading = count('r');
  const error = Math.hypot(countSd(reading, swatch([reading])), PLACE_SD, DRIFT_SD.swatch);
  const weights = [UNSWATCHED_SD ** -2, error ** -2];
  const total = weights[0]! + weights[1]!;
  const { mean, sd } = pitch({ ...BARE, specimens: [swatch([reading])] });
  expect(mean).toBeCloseTo(
    (weights[0]! * Math.log(5) + weights[1]! * Math.log(100 / 18)) / total,
    12,
  );
  expect(sd).toBeCloseTo(total ** -0.5, 12);
});

test('K17: a tight hand is tight both ways: a stitch count moves the rows by the stated correlation', () => {
  const { mean: rows } = pitch({ ...BARE, specimens: [swatch([count('r')])] }, 'asKnit', 'length');
  const { mean: stitches } = pitch({ ...BARE, specimens: [swatch([count('r')])] });
  const share = (rows - Math.log(3.6)) / (stitches - Math.log(5));
  // Regression of one of two equal normals on the other is their correlation.
  expect(share).toBeCloseTo(HAND_CORRELATION, 9);
});

test('K18: more places narrow, but never below how far a swatch lies from a garment', () => {
  const places = Array.from({ length: 40 }, (_, k) => count(`r${k}`));
  const one = pitch({ ...BARE, specimens: [swatch([count('r')])] }).sd;
  const many = pitch({ ...BARE, specimens: [swatch(places)] }).sd;
  expect(many).toBeLessThan(one);
  const floor = (UNSWATCHED_SD ** -2 + DRIFT_SD.swatch ** -2) ** -0.5;
  expect(many).toBeGreaterThan(floor);
});

test('K19: the same place counted before and after washing tells of growth better than two places', () => {
  const pair = (place: string) => [
    count('a', { place: 'middle' }),
    count('b', { place, state: 'dried', count: 17 }),
  ];
  const growth = (readings: CountReading[]) => {
    const model = fabricModel({ ...BARE, specimens: [swatch(readings)] });
    return sdOf(fabricPosterior(model), model.driedOverAsKnit.width);
  };
  expect(growth(pair('middle'))).toBeLessThan(growth(pair('edge')));
});

test('K20: evidence that is less like the garment weighs less', () => {
  const sd = (change: Partial<Specimen>) =>
    pitch({ ...BARE, specimens: [swatch([count('r')], change)] }).sd;
  const plain = sd({});
  expect(sd({ kind: 'piece' })).toBeLessThan(plain);
  expect(sd({ workedAsGarment: false })).toBeGreaterThan(plain);
  expect(sd({ stitch: 'garter' })).toBeGreaterThan(sd({ workedAsGarment: false }));
});

test('K21: a stretched reading bounds: nearly all of its belief lies at tighter fabric', () => {
  const { mean, sd } = handPull(BARE, 'width');
  expect(mean / sd).toBeCloseTo(2, 12);
  expect(mean).toBeGreaterThan(0.05);
});

test('K22: a pulled reading that is tighter than the flat ones is reported as a slip', () => {
  const flat = swatch([count('f', { count: 18 })], { kind: 'piece' });
  const pulled = (n: number) =>
    swatch([count('p', { count: n, read: 'stretched' })], { id: 'p', name: 'Pulled' });
  const conflicts = (n: number) => {
    const question = { ...BARE, specimens: [flat, pulled(n)] };
    const model = fabricModel(question);
    return stretchConflicts(model, fabricPosterior(model), question.specimens);
  };
  expect(conflicts(15)).toEqual([]);
  expect(conflicts(22)[0]).toMatch(/^Pulled: read while pulling, 22 over \{mm:100\} is tighter/);
});

test('K23: with neither gauge nor yarn, the range runs over nearly any yarn', () => {
  const { sd } = pitch({ ...BARE, patternGauge: null });
  expect(Math.exp(2 * 1.645 * sd)).toBeGreaterThan(3);
  const known = pitch({ ...BARE, patternGauge: null, weightClass: 4 });
  // Standard yarn weight system, class 4: 16 to 20 stitches over 4 in.
  expect(101.6 / Math.exp(known.mean)).toBeGreaterThan(16);
  expect(101.6 / Math.exp(known.mean)).toBeLessThan(20);
  expect(known.sd).toBeLessThan(sd);
});
