import { expect, test } from 'vitest';
import { forecast } from '../garment/index.ts';
import { mm } from '../units/index.ts';
import { QUESTION } from './check/questions.ts';
import { sizeByNeedle } from './size-by-needle.ts';
import type { RoutesQuestion, SizeAtNeedle } from './types.ts';

const OPTIONS = { seed: 3, draws: 2000 } as const;
const table = (change: Partial<RoutesQuestion> = {}): readonly SizeAtNeedle[] => {
  const found = sizeByNeedle({ ...QUESTION, ...change }, OPTIONS);
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.value;
};
const pure = (rows: readonly SizeAtNeedle[], needle: number) =>
  rows.filter((row) => row.needleMm === needle && row.size === row.lengthsOf);

test('O18: on its own needle a size fits as the forecast says of it', () => {
  const sizes = new Map(forecast(QUESTION.forecast, OPTIONS).sizes.map((s) => [s.size, s]));
  const own = pure(table(), 4);
  expect(own.map(({ size }) => size)).toEqual(QUESTION.forecast.sizes);
  for (const { size, chanceAllFit } of own) expect(chanceAllFit).toBe(sizes.get(size)!.chanceAll);
});

test('O18: every size on every needle tried, and one up and down, thinnest first', () => {
  const rows = table();
  expect([...new Set(rows.map(({ needleMm }) => needleMm))]).toEqual([3.75, 4, 4.5]);
  for (const needle of [3.75, 4, 4.5]) expect(pure(rows, needle)).toHaveLength(9);
  expect(pure(rows, 4)[0]!.gaugeFrom).toBe('evidence');
  expect(pure(rows, 4.5)[0]!.gaugeFrom).toBe('model');
});

test('O18: thicker needles make wider stitches and wider sizes; lengths knit to a tape stay', () => {
  const rows = table();
  const at = (needle: number, landmark: string) =>
    pure(rows, needle)[3]!.landmarks.find((each) => each.landmark === landmark)!.finishedMm.p50Mm;
  expect(at(4.5, 'chest')).toBeGreaterThan(at(4, 'chest'));
  expect(at(3.75, 'chest')).toBeLessThan(at(4, 'chest'));
  expect(at(4.5, 'body-length') / at(4, 'body-length')).toBeCloseTo(1, 9);
  expect(pure(rows, 4.5)[3]!.stitchMm).toBeGreaterThan(pure(rows, 4)[3]!.stitchMm);
});

test('O18: what was measured on another needle speaks for it', () => {
  const [swatch] = QUESTION.forecast.specimens;
  const on5 = {
    ...swatch!,
    id: 'five',
    needle: mm(5),
    readings: swatch!.readings.map((r) =>
      r.kind === 'count' ? { ...r, count: r.count * 0.8 } : r,
    ),
  };
  const rows = table({
    forecast: { ...QUESTION.forecast, specimens: [swatch!, on5] },
  });
  expect(pure(rows, 5)[0]!.gaugeFrom).toBe('evidence');
  // Read at 100/16.4 = 6.10 mm; the pattern's 5 mm pulls it back by the share of its prior.
  expect(pure(rows, 5)[0]!.stitchMm).toBeGreaterThan(5.6);
});

test('O18: a blend is listed where it beats every size', () => {
  for (const needle of [3.75, 4, 4.5]) {
    const rows = table().filter(({ needleMm }) => needleMm === needle);
    const blends = rows.filter(({ size, lengthsOf }) => size !== lengthsOf);
    const best = Math.max(...pure(rows, needle).map(({ chanceAllFit }) => chanceAllFit ?? 0));
    expect(blends.length).toBeLessThanOrEqual(1);
    for (const { chanceAllFit } of blends) expect(chanceAllFit!).toBeGreaterThan(best);
  }
});
