import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatExact } from './format-exact.ts';
import { formatKnown } from './format-known.ts';
import { formatLength, type LengthFormat, printedStep } from './format-length.ts';
import { formatRange } from './format-range.ts';
import { formatOffBy, formatSigned } from './format-signed.ts';
import { unbroken } from './length-words.ts';

test.each<[number, LengthFormat, string]>([
  [339.725, { unit: 'in' }, '13⅜ in'],
  [339.725, { unit: 'in', style: 'ascii' }, '13 3/8 in'],
  [339.725, { unit: 'in', style: 'spoken' }, '13 and 3 eighths inches'],
  [339.725, { unit: 'in', fraction: 4 }, '13½ in'],
  [338.1375, { unit: 'in', fraction: 16 }, '13 5/16 in'],
  [12.7, { unit: 'in' }, '½ in'],
  [12.7, { unit: 'in', style: 'spoken' }, 'half an inch'],
  [9.525, { unit: 'in', style: 'spoken' }, '3 eighths of an inch'],
  [25.4, { unit: 'in', style: 'spoken' }, '1 inch'],
  [342.9, { unit: 'in', style: 'spoken' }, '13 and a half inches'],
  [-50.8, { unit: 'in', style: 'spoken' }, 'minus 2 inches'],
  [340, { unit: 'cm' }, '34 cm'],
  [345.4, { unit: 'cm' }, '34.5 cm'],
  [345, { unit: 'cm', decimalMark: ',' }, '34,5 cm'],
  [345, { unit: 'cm', style: 'spoken', words: 'uk' }, '34.5 centimetres'],
  [10, { unit: 'cm', style: 'spoken' }, '1 centimeter'],
  [420, { unit: 'mm' }, '420 mm'],
  [4.5, { unit: 'mm' }, '4.5 mm'],
  [340, { unit: 'cm', bare: true }, '34'],
  [-0.2, { unit: 'cm' }, '0 cm'],
  [0, { unit: 'in' }, '0 in'],
  [304.6, { unit: 'in' }, '12 in'],
])('U7: %d mm prints with %j as %j', (length, format, printed) => {
  expect(formatLength(length, format)).toBe(printed);
});

test('U7: the printed number is at most half a step from the length', () => {
  const fraction = fc.constantFrom<4 | 8 | 16>(4, 8, 16);
  const value = (printed: string) =>
    printed.split(' ').reduce((sum, part) => {
      const [top, bottom = '1'] = part.split('/');
      return sum + Number(top) / Number(bottom);
    }, 0);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), fraction, (length, fraction) => {
      for (const unit of ['in', 'cm', 'mm'] as const) {
        const format = { unit, fraction, style: 'ascii', bare: true } as const;
        const perUnit = { in: 25.4, cm: 10, mm: 1 }[unit];
        const error = Math.abs(value(formatLength(length, format)) * perUnit - length);
        // 1e-6 mm: rounding of the doubles in this check and the hair that counts as on the mark.
        expect(error).toBeLessThanOrEqual(printedStep(format) / 2 + 1e-6);
      }
    }),
  );
});

test.each<[number, LengthFormat, string]>([
  [339.725, { unit: 'in' }, '13⅜ in'],
  [338.1375, { unit: 'in' }, '13 5/16 in'],
  [340.36, { unit: 'in' }, '13.4 in'],
  [345.6, { unit: 'cm' }, '34.56 cm'],
  [345.6, { unit: 'cm', decimalMark: ',' }, '34,56 cm'],
  [3.25, { unit: 'mm' }, '3.25 mm'],
  [-3.175, { unit: 'in', style: 'ascii' }, '-1/8 in'],
])('U6: %d mm prints exactly with %j as %j', (length, format, printed) => {
  expect(formatExact(length, format)).toBe(printed);
});

test('U7: what is known more finely than the tape shows is printed as finely as it is known', () => {
  expect(formatKnown(345, 1, { unit: 'in' })).toBe('13.58 in');
  expect(formatKnown(345, 10, { unit: 'in' })).toBe('13⅝ in');
  expect(formatKnown(340.36, 2.54, { unit: 'in' })).toBe('13⅜ in');
  expect(formatKnown(345.6, 0.1, { unit: 'cm' })).toBe('34.56 cm');
  expect(formatKnown(-3.25, 0.01, { unit: 'mm', style: 'ascii' })).toBe('-3.25 mm');
  expect(() => formatKnown(1, 0, { unit: 'cm' })).toThrow(RangeError);
});

test('U8: a range is rounded outwards', () => {
  expect(formatRange(339.725, 349.25, 'in')).toBe('13⅜–13¾ in');
  expect(formatRange(339, 350, 'in')).toBe('13¼–13⅞ in');
  expect(formatRange(339, 350, 'in', { style: 'ascii' })).toBe('13 1/4-13 7/8 in');
  expect(formatRange(338, 343, 'cm', { decimalMark: ',' })).toBe('33,8–34,3 cm');
  expect(formatRange(966, 1050, 'cm')).toBe('96.6–105.0 cm');
  expect(formatRange(960, 1050, 'cm')).toBe('96–105 cm');
  expect(formatRange(340, 340, 'cm')).toBe('34 cm');
  expect(formatRange(-50.8, 25.4, 'in', { signed: true })).toBe('−2 to +1 in');
  expect(formatRange(-50.8, -25.4, 'in', { style: 'ascii' })).toBe('-2 to -1 in');
  expect(formatRange(10, 20, 'cm', { style: 'spoken', words: 'uk' })).toBe('1 to 2 centimetres');
  expect(() => formatRange(2, 1, 'cm')).toThrow(RangeError);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 0, max: 1e5 }), (low, more) => {
      const [from, to] = formatRange(low / 100, (low + more) / 100, 'cm', { bare: true }).split(
        '–',
      );
      // 1e-9 mm: the hair that counts as on the mark.
      expect(Number(from) * 10).toBeLessThanOrEqual(low / 100 + 1e-9);
      expect(Number(to ?? from) * 10).toBeGreaterThanOrEqual((low + more) / 100 - 1e-9);
    }),
  );
});

test('U4: a difference shows its sign', () => {
  expect(formatSigned(50.8, { unit: 'in' })).toBe('+2 in');
  expect(formatSigned(-50, { unit: 'cm' })).toBe('−5 cm');
  expect(formatSigned(-50, { unit: 'cm', style: 'ascii' })).toBe('-5 cm');
  expect(formatSigned(0.1, { unit: 'cm' })).toBe('0 cm');
  expect(formatSigned(50.8, { unit: 'in', style: 'spoken' })).toBe('plus 2 inches');
});

test('a printed length can be kept on one line', () => {
  expect(unbroken('13 3/8 in')).toBe('13\u00a03/8\u00a0in');
});

test('what is not a number cannot be printed', () => {
  expect(() => formatLength(Number.NaN, { unit: 'cm' })).toThrow(RangeError);
  expect(() => formatLength(Number.POSITIVE_INFINITY, { unit: 'in' })).toThrow(RangeError);
});

test('U7: wanted, is and off by add up as they are printed', () => {
  // Half-way marks: 205.2 mm prints as 20.5 cm and 204.8 as 20.5, though they are 0.4 mm apart.
  expect(formatOffBy(205.2, 204.8, { unit: 'cm', bare: true })).toBe('0');
  expect(formatOffBy(204.4, 204.6, { unit: 'cm', bare: true })).toBe('−0.1');
  expect(formatOffBy(517.4, 519.2, { unit: 'in', bare: true })).toBe('−⅛');
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 2000, noNaN: true }),
      (is, wanted) => {
        const tenths = (length: number) =>
          Math.round(10 * Number(formatLength(length, { unit: 'cm', bare: true })));
        const off = formatOffBy(is, wanted, { unit: 'cm', bare: true });
        const said = Math.round(10 * Number(off.replace('−', '-').replace('+', '')));
        expect(said).toBe(tenths(is) - tenths(wanted));
      },
    ),
  );
});
