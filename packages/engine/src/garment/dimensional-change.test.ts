import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changeBetween } from '../fabric/index.ts';
import { mm } from '../units/index.ts';
import { applyChange, dimensionalChange, meanChanges } from './dimensional-change.ts';

const change = (before: number, after: number): number | false => {
  const result = dimensionalChange(mm(before), mm(after));
  return result.ok && result.value;
};

test('C1: shrinkage is negative, growth positive', () => {
  // ISO 5077:2007: (xt − x0) / x0 · 100, shrinkage with a minus sign; marks of 350 mm as in ISO 3759.
  expect(change(350, 343)).toBeCloseTo(-2, 12);
  expect(change(350, 360.5)).toBeCloseTo(3, 12);
  expect(change(350, 350)).toBe(0);
});

test('C1: rows of Munden, dry to wet relaxed, come out as −5.66 and −7.32 %', () => {
  // Munden 1959; three figures.
  const { length, width } = changeBetween('dryRelaxed', 'wetRelaxed');
  expect(change(100, 100 * (1 + length))).toBeCloseTo(-5.66, 2);
  expect(change(100, 100 * (1 + width))).toBeCloseTo(-7.32, 2);
});

test('C1: applying a change undoes measuring it', () => {
  const lengths = fc.double({ min: 1, max: 3000, noNaN: true });
  fc.assert(
    fc.property(lengths, lengths, (before, after) => {
      // Rounding of a change of up to 300,000 %.
      const back = applyChange(mm(before), change(before, after) as number);
      expect(Math.abs(back / after - 1)).toBeLessThan(1e-9);
    }),
  );
});

test('C1: scaling both lengths changes nothing', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 1000, noNaN: true }),
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      (before, ratio) => {
        expect(change(before * 25.4, before * ratio * 25.4)).toBeCloseTo(
          change(before, before * ratio) as number,
          9,
        );
      },
    ),
  );
});

test('C2: length and width are reported apart, as means', () => {
  const result = meanChanges([
    { direction: 'length', before: mm(350), after: mm(357) },
    { direction: 'length', before: mm(350), after: mm(364) },
    { direction: 'width', before: mm(350), after: mm(343) },
  ]);
  expect(result.ok && result.value.length).toBeCloseTo(3, 12);
  expect(result.ok && result.value.width).toBeCloseTo(-2, 12);
  const none = meanChanges([]);
  expect(none).toEqual({ ok: true, value: { width: null, length: null } });
});

test('C2: a length of nothing is a fault that says which pair', () => {
  const result = meanChanges([
    { direction: 'length', before: mm(350), after: mm(357) },
    { direction: 'width', before: mm(0), after: mm(343) },
  ]);
  expect(result.ok).toBe(false);
  if (!result.ok)
    expect(result.faults[0]).toMatchObject({ field: 'pairs[1].before', given: '0 mm' });
  expect(() => applyChange(mm(100), -100)).toThrow(RangeError);
});
