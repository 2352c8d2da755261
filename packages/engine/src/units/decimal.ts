import { type Read, read, unread } from './problem.ts';
import { type Rational, ratio } from './rational.ts';

/** A plain number as written. `places`: digits after the decimal mark, which say how finely it was meant. */
export interface Decimal {
  readonly value: Rational;
  readonly places: number;
}

const MARKED = /^(\d*)([.,])(\d+)$/;

function ambiguousComma(whole: string, after: string): Read<never> {
  return unread(
    'comma-ambiguous',
    `the comma in ${whole},${after} may mark decimals or thousands`,
    `Write ${whole}.${after} for decimals, ${whole}${after} for thousands.`,
  );
}

function severalMarks(raw: string): Read<never> {
  const digits = raw.split(/[.,]/);
  const last = digits.pop() ?? '';
  return unread(
    'several-marks',
    `${raw} has more than one decimal mark`,
    `Leave thousands unmarked, with one decimal mark at most, such as ${digits.join('')}.${last}.`,
  );
}

/**
 * Reads digits with at most one decimal mark, a point or a comma. `12,5` is 12.5. `1,250` is
 * refused because it may be 1.25 or 1250; `0,125` and `1234,567` can only be decimals.
 */
export function readDecimal(raw: string): Read<Decimal> {
  if (/^\d+$/.test(raw)) return read({ value: ratio(BigInt(raw)), places: 0 });
  if (/^\d*[.,]$/.test(raw))
    return unread('unfinished', `${raw} stops at its decimal mark`, 'Add the digits after it.');
  const [, whole, mark, after] = MARKED.exec(raw) ?? [];
  if (whole === undefined || mark === undefined || after === undefined) return severalMarks(raw);
  if (mark === ',' && after.length === 3 && /^[1-9]\d{0,2}$/.test(whole))
    return ambiguousComma(whole, after);
  const value = ratio(BigInt(whole + after), 10n ** BigInt(after.length));
  return read({ value, places: after.length });
}
