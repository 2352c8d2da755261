import { EXAMPLES, type GarmentRecord } from '@dryflat/record';
import { expect, it } from 'vitest';
import { compareKept, scoreOf } from './kept-score.ts';

const record = structuredClone(
  EXAMPLES.find((each) => each.slug === 'hayloft-pullover')?.record,
) as GarmentRecord;

it('joins a measurement with the kept range of the same place and state', () => {
  const kept = record.forecasts[0]!;
  const compared = compareKept(record, kept);
  expect(compared.length).toBeGreaterThan(0);
  for (const each of compared) {
    const { p05Mm, p95Mm } = each.range;
    expect(each.inside).toBe(each.measuredMm >= p05Mm && each.measuredMm <= p95Mm);
  }
});

it('makes a girth measured flat go around before it is compared, and leaves out one not said', () => {
  const kept = record.forecasts[0]!;
  const flat = structuredClone(record);
  const all = compareKept(record, kept);
  const girth = all.find((each) => each.span === 'around')!;
  for (const outcome of flat.outcomes)
    for (const measured of outcome.measured)
      if (measured.id === girth.measured.id) {
        measured.mm = girth.measuredMm / 2;
        measured.span = 'flat';
      }
  const again = compareKept(flat, kept).find((each) => each.measured.id === girth.measured.id);
  expect(again?.measuredMm).toBeCloseTo(girth.measuredMm, 9);
  for (const outcome of flat.outcomes)
    for (const measured of outcome.measured)
      if (measured.id === girth.measured.id) delete measured.span;
  expect(compareKept(flat, kept)).toHaveLength(all.length - 1);
});

it('does not score a forecast that was kept after the outcome', () => {
  const late = { ...record.forecasts[0]!, on: '2999-01-01' };
  const compared = compareKept(record, late).filter(
    (each) => (each.measured.on ?? each.outcome.on) !== undefined,
  );
  expect(compared.length).toBeGreaterThan(0);
  expect(scoreOf(compared)).toEqual({ inside: 0, of: 0 });
});
