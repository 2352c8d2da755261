import { forecast, gaugeSteps } from '@dryflat/engine/garment';
import { askForecast, EXAMPLES } from '@dryflat/record';
import { expect, it } from 'vitest';
import { once } from '../../../../../scripts/lib/once.mjs';
import { countsOf, type Rung, rungScale, rungsOf, shortLadder } from './ladder-rungs.ts';

const record = EXAMPLES.find((each) => each.slug === 'yoke-pullover')!.record;
const asked = askForecast(record);
if (!asked.ok) throw new Error('the example cannot be forecast');
const question = once(
  () =>
    ({
      record,
      steps: gaugeSteps(asked.value),
      now: forecast(asked.value, { draws: 500 }).gauge,
      state: 'dried',
      span: '10cm',
    }) as const,
);

it('turns pitches into counts, the widest stitch giving the fewest', () => {
  const counts = countsOf({ p05Mm: 4, p50Mm: 5, p95Mm: 8 }, '10cm');
  expect(counts).toEqual({ fewest: 12.5, likely: 20, most: 25 });
  // 4 in is 101.6 mm by the definition of the inch (25.4 mm), so 1.6 % more stitches.
  expect(countsOf({ p05Mm: 4, p50Mm: 5, p95Mm: 8 }, '4in').likely).toBeCloseTo(20.32, 9);
});

it('begins before any measurement, has a rung for each reading of its direction, and ends with all', () => {
  for (const along of ['stitch', 'row'] as const) {
    const rungs = rungsOf({ ...question(), along });
    const direction = along === 'stitch' ? 'width' : 'length';
    const readings = record.evidence.flatMap((each) =>
      each.readings.filter((one) => one.direction === direction && one.kind === 'count'),
    );
    expect(rungs[0]?.id).toBe('before');
    expect(rungs.at(-1)?.id).toBe('now');
    expect(rungs).toHaveLength(readings.length + 2);
  }
});

it('narrows from the first rung to the last, all on one scale', () => {
  const rungs = rungsOf({ ...question(), along: 'stitch' });
  const width = (at: number): number => rungs.at(at)!.most / rungs.at(at)!.fewest;
  expect(width(-1)).toBeLessThan(width(0));
  const scale = rungScale(rungs);
  for (const { fewest, most } of rungs) {
    expect(fewest).toBeGreaterThan(scale.low);
    expect(most).toBeLessThan(scale.high);
  }
});

it('cuts a long ladder to where it began, its newest reading, and now', () => {
  const rungs = ['before', 'a', 'b', 'now'].map(
    (id): Rung => ({ id, label: id, fewest: 1, likely: 2, most: 3 }),
  );
  expect(shortLadder(rungs).map(({ id }) => id)).toEqual(['before', 'b', 'now']);
  expect(shortLadder(rungs.slice(0, 3))).toHaveLength(3);
});

it('leaves out the name of an only specimen', () => {
  const [, first] = rungsOf({ ...question(), along: 'stitch' });
  expect(record.evidence).toHaveLength(1);
  expect(first?.label).toMatch(/^18.5 stitches over/);
});
