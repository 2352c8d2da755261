import { EXAMPLES, type PatternMeasurement } from '@dryflat/record';
import { expect, it } from 'vitest';
import { targetText } from './pattern-says.ts';

const record = EXAMPLES.find((each) => each.slug === 'waistcoat')!.record;
const at = record.pattern.sizes.indexOf(record.pattern.chosen!);
const chest = record.pattern.measurements.find((each) => each.landmark === 'chest')!;
const length = record.pattern.measurements.find((each) => each.landmark === 'body-length')!;
const print = (value: number): string => `${value} mm`;
const valued = (value: number | null, span?: 'flat' | 'around'): PatternMeasurement => {
  const { span: _, ...rest } = chest;
  return {
    ...rest,
    values: chest.values.map((each, i) => (i === at ? value : each)),
    ...(span && { span }),
  };
};

it('gives a girth both ways, whichever way the pattern prints it', () => {
  const both = 'The pattern says 1040 mm around, 520 mm flat.';
  expect(targetText(record, valued(1040, 'around'), print)).toBe(both);
  expect(targetText(record, valued(520, 'flat'), print)).toBe(both);
});

it('says what is not said', () => {
  expect(targetText(record, valued(520), print)).toMatch(/flat or around is not said yet/);
  expect(targetText(record, valued(null), print)).toBe('The pattern gives no number here.');
  expect(targetText(record, length, print)).toBe(`The pattern says ${length.values[at]} mm.`);
});
