import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatExact } from './format-exact.ts';
import { formatLength } from './format-length.ts';
import { type ParsedLength, parseLength } from './parse-length.ts';

function parsed(text: string): ParsedLength {
  const result = parseLength(text, { field: 'x', signed: true });
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}
const style = fc.constantFrom<'glyph' | 'ascii'>('glyph', 'ascii');

test('U6: eighths of an inch come back exactly, printed and read again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), style, (eighths, style) => {
      const length = parsed(`${eighths / 8} in`).value;
      const printed = formatLength(length, { unit: 'in', style });
      expect(parsed(printed).value).toBe(length);
      expect(formatLength(parsed(printed).value, { unit: 'in', style })).toBe(printed);
    }),
  );
});

test('U6: tenths of a centimetre come back exactly, with either decimal mark', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99_999 }),
      fc.constantFrom<'.' | ','>('.', ','),
      (tenths, decimalMark) => {
        const printed = formatLength(tenths, { unit: 'cm', decimalMark });
        expect(parsed(printed).value).toBe(tenths);
      },
    ),
  );
});

test('U6: the exact print of any length in any unit reads back as the same double', () => {
  const anyLength = fc.double({ min: 0.001, max: 99_999, noNaN: true });
  fc.assert(
    fc.property(anyLength, fc.constantFrom('in', 'cm', 'mm'), style, (length, unit, style) => {
      expect(parsed(formatExact(length, { unit, style })).value).toBe(length);
      expect(parsed(formatExact(-length, { unit, style })).value).toBe(-length);
    }),
    { numRuns: 500 },
  );
});

test('U1: the same length in another unit is the same length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9_999 }), (n) => {
      expect(parsed(`${n} cm`).value).toBe(parsed(`${n * 10} mm`).value);
      expect(parsed(`${n} mm`).value).toBe(parsed(`${(n / 1000).toFixed(3)} m`).value);
      const feet = Math.floor(n / 12);
      fc.pre(n % 12 > 0 && feet > 0 && n < 3900);
      expect(parsed(`${n} in`).value).toBe(parsed(`${feet} ft ${n % 12} in`).value);
      expect(parsed(`${n} in`).value).toBe(parsed(`${(n * 254) / 100} cm`).value);
    }),
  );
});

test('U5: no text throws, and what is read is finite, in range and finely enough written', () => {
  const nearly = fc
    .array(
      fc.constantFrom(...'0123456789 ,.-−/½⅜"\'″′+&'.split(''), 'in', 'cm', 'ft', 'and', 'm', 'to'),
      { maxLength: 12 },
    )
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(
      fc.oneof(fc.string({ unit: 'binary' }), nearly),
      fc.boolean(),
      fc.option(fc.constantFrom<'in' | 'cm'>('in', 'cm'), { nil: undefined }),
      (text, signed, unit) => {
        const result = parseLength(text, { field: 'x', signed, unit });
        if (!result.ok) {
          expect(result.faults).toHaveLength(1);
          expect(result.faults[0]?.mend).toMatch(/\.$/);
          return;
        }
        const { value, resolution } = result.value;
        expect(Math.abs(value)).toBeLessThanOrEqual(100_000);
        expect(resolution).toBeGreaterThan(0);
        expect(signed || value > 0).toBe(true);
      },
    ),
    { numRuns: 3000 },
  );
});
