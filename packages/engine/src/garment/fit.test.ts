import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { FitWanted, ForecastQuestion } from './forecast-types.ts';

const chestWanted = (change: Partial<FitWanted> = {}): FitWanted => ({
  landmark: 'chest',
  body: mm(980),
  bodyFrom: 'measured',
  kind: 'ease',
  min: mm(30),
  max: mm(110),
  ...change,
});

const ask = (wanted: readonly FitWanted[], change: Partial<ForecastQuestion> = {}) =>
  forecast({ ...PULLOVER, judgeAt: 'dried', wanted, ...change });

test('F14: the chance of a finished range is that of a log-normal, by jStat’s normal CDF', () => {
  const f = ask([chestWanted({ kind: 'finished', min: mm(1000), max: mm(1100), body: null })]);
  const { p50Mm, p95Mm } = f.measurements[0]!.states.dried;
  const mu = Math.log(p50Mm);
  const sd = (Math.log(p95Mm) - mu) / jStat.normal.inv(0.95, 0, 1);
  const cdf = (x: number) => jStat.normal.cdf(Math.log(x), mu, sd);
  // 10,000 draws: standard error of a share is at most 0.5 %; three of them.
  expect(Math.abs(f.fit[0]!.chance - (cdf(1100) - cdf(1000)))).toBeLessThan(0.015);
  expect(Math.abs(f.fit[0]!.tooSmall - cdf(1000))).toBeLessThan(0.015);
});

test('F15: too small, in range and too large add up to one, in every state', () => {
  const fit = ask([chestWanted()]).fit[0]!;
  expect(fit.tooSmall + fit.chance + fit.tooLarge).toBeCloseTo(1, 12);
  expect(fit.chanceByState.dried).toBe(fit.chance);
});

test('F16: ease is finished less body, and a body from a table is less sure', () => {
  const tape = ask([chestWanted()]).fit[0]!;
  const table = ask([chestWanted({ bodyFrom: 'table' })]).fit[0]!;
  // Medians of a difference of nearly symmetric quantities: within 2 mm at 10,000 draws.
  expect(Math.abs(tape.easeMm!.p50Mm - (tape.finishedMm.p50Mm - 980))).toBeLessThan(2);
  const breadth = (f: typeof tape) => f.easeMm!.p95Mm - f.easeMm!.p05Mm;
  expect(breadth(table)).toBeGreaterThan(breadth(tape));
});

test('F17: a wider wanted range never has a smaller chance', () => {
  const chances = [0, 20, 60].map(
    (more) => ask([chestWanted({ min: mm(30 - more), max: mm(110 + more) })]).fit[0]!.chance,
  );
  expect(chances[0]).toBeLessThan(chances[1]!);
  expect(chances[1]).toBeLessThan(chances[2]!);
});

test('F18: all fit at once is no likelier than the least likely, and is null where nothing is wanted', () => {
  const length: FitWanted = {
    ...chestWanted(),
    landmark: 'body-length',
    kind: 'finished',
    body: null,
    min: mm(580),
    max: mm(620),
  };
  const f = ask([chestWanted(), length]);
  expect(f.chanceAllFit).toBeLessThanOrEqual(Math.min(...f.fit.map((x) => x.chance)));
  expect(ask([]).chanceAllFit).toBeNull();
});

test('F19: the best size is the one whose finished chest is nearest the wanted, and the sentence says why', () => {
  const f = ask([chestWanted()], { chosen: 0 });
  // Sizes are 860 + 60k around; 980 + 30…110 is met by 1040 (fourth).
  expect(f.advice.bestSize).toBe('4');
  expect(f.advice.sentence).toMatch(
    /because the chest of size 1 would come out about \{mm:\d+\.\d\} too small/,
  );
  const chances = f.sizes.map((s) => s.chanceAll);
  expect(Math.max(...chances)).toBe(chances[3]);
});

test('F19: a miss too small for the mark of a tape is not named', () => {
  const one = { sizes: ['only'], chosen: 0 };
  const finished = ask([chestWanted()], one).sizes[0]!.landmarks[0]!.p50Mm;
  const above = (by: number) => {
    const max = mm(finished - by);
    const wanted = chestWanted({ kind: 'finished', body: null, min: mm(max - 40), max });
    const { advice } = ask([wanted], one);
    return advice.sentence;
  };
  // Half of ⅛ in is 1.6 mm; the draws are the same every time, so the median does not move.
  expect(above(0.8)).not.toMatch(/come out about/);
  expect(above(6)).toMatch(/come out about \{mm:6\.0\} too large/);
});

test('F20: a fabric that comes out tight is helped by a larger needle, a loose one by a smaller', () => {
  const measured = (flatMm: number) => [
    {
      id: 't',
      measurement: 'chest',
      state: 'asKnit' as const,
      value: mm(flatMm),
      span: 'flat' as const,
    },
  ];
  // One size only, so that another size cannot mend it.
  const one = {
    sizes: ['4'],
    chosen: 0,
    measurements: PULLOVER.measurements.map((m) => ({
      ...m,
      values: [m.values[3]!],
      counts: [null],
    })),
  };
  const needle = (flatMm: number) =>
    ask([chestWanted()], { ...one, measured: measured(flatMm) }).advice.needle;
  expect(needle(478)).toBe('larger');
  expect(needle(525)).toBe('keep');
  expect(needle(572)).toBe('smaller');
  expect(ask([chestWanted()], one).advice.needle).toBe('no-evidence');
});

test('a size that lacks a wanted measurement is left out of the choice', () => {
  const measurements = PULLOVER.measurements.map((m) =>
    m.id === 'chest' ? { ...m, values: m.values.map((v, k) => (k === 2 ? null : v)) } : m,
  );
  expect(ask([chestWanted()], { measurements }).sizes.map((s) => s.size)).not.toContain('3');
});
