import { readDecimal } from './decimal.ts';
import type { Lexeme } from './lexemes.ts';
import { type Read, read, unread } from './problem.ts';
import { add, type Rational, ratio } from './rational.ts';

/** A number with how finely it was written, and where reading goes on. */
export interface Written {
  readonly value: Rational;
  /** The smallest step that the writing tells apart: 1/8 for `13 3/8`, 1/10 for `34,5`, 1 for `34`. */
  readonly step: Rational;
  readonly next: number;
}

const textAt = (pieces: readonly Lexeme[], i: number): string => pieces[i]?.text ?? '';
const numberAt = (pieces: readonly Lexeme[], i: number): string | null =>
  pieces[i]?.kind === 'number' ? pieces[i].text : null;
const isFraction = (pieces: readonly Lexeme[], i: number): boolean =>
  numberAt(pieces, i) !== null && textAt(pieces, i + 1) === '/';

function tooManySlashes(): Read<never> {
  return unread(
    'fraction-chained',
    'a fraction has one slash, this has more',
    'Write the whole, a space and one fraction, such as 13 3/8.',
  );
}

function notWholes(top: string, bottom: string): Read<never> {
  return unread(
    'fraction-not-whole',
    `the fraction ${top}/${bottom} is not made of two whole numbers`,
    'Write it like 3/8, or as a decimal like 13.375.',
  );
}

function decimalAndFraction(whole: string): Read<never> {
  return unread(
    'fraction-after-decimal',
    `${whole} has decimals and a fraction after them`,
    'Use one of the two, like 13.375 or 13 3/8.',
  );
}

/** What people divide a unit into; `34/86` is two sizes, not a fraction. */
const PARTS = new Set('2 3 4 5 6 7 8 9 10 12 16 20 32 64 100'.split(' '));

function oddFraction(top: string, bottom: string): Read<never> {
  return unread(
    'fraction-odd',
    `${top}/${bottom} is not a fraction that a tape or a scale shows`,
    'Keep one number, with a fraction like 3/8 or decimals.',
  );
}

/** What `133/8` may have meant: a space was forgotten (13 3/8), or that many parts (16 5/8). */
function meantBy(top: string, bottom: string): string {
  const [n, d] = [BigInt(top), BigInt(bottom)];
  const rest = n % d === 0n ? '' : ` ${n % d}/${bottom}`;
  const last = BigInt(top.slice(-1));
  const spaced = top.length > 1 && last > 0n && last < d;
  return `${spaced ? `${top.slice(0, -1)} ${last}/${bottom} or ` : ''}${n / d}${rest}`;
}

function improper(top: string, bottom: string): Read<never> {
  return unread(
    'fraction-improper',
    `the fraction ${top}/${bottom} is not below one, so a space may be missing`,
    `Write the whole and the fraction apart, such as ${meantBy(top, bottom)}.`,
  );
}

/** The fraction that starts at `i`; it must lie below one. */
function readFraction(pieces: readonly Lexeme[], i: number): Read<Written> {
  const top = textAt(pieces, i);
  const bottom = numberAt(pieces, i + 2);
  if (bottom === null)
    return unread(
      'unfinished',
      `the fraction ${top}/ has nothing below it`,
      'Finish it, like 3/8.',
    );
  if (textAt(pieces, i + 3) === '/') return tooManySlashes();
  if (!/^\d+$/.test(top) || !/^\d+$/.test(bottom)) return notWholes(top, bottom);
  if (BigInt(bottom) === 0n)
    return unread('fraction-by-zero', 'a fraction cannot have 0 below it', 'Write it like 3/8.');
  if (!PARTS.has(bottom.replace(/^0+/, ''))) return oddFraction(top, bottom);
  if (BigInt(top) >= BigInt(bottom)) return improper(top, bottom);
  const d = BigInt(bottom);
  return read({ value: ratio(BigInt(top), d), step: ratio(1n, d), next: i + 3 });
}

function readMixed(pieces: readonly Lexeme[], i: number, fraction: number): Read<Written> {
  const whole = textAt(pieces, i);
  if (!/^\d+$/.test(whole)) return decimalAndFraction(whole);
  const part = readFraction(pieces, fraction);
  if (!part.ok) return part;
  return read({ ...part.value, value: add(ratio(BigInt(whole)), part.value.value) });
}

const JOINS = new Set(['-', 'and', '&', '+']);

/** Reads `13`, `13.375`, `3/8`, `13 3/8`, `13-3/8` or `13 and 3/8` at `i`, which holds a number. */
export function readNumber(pieces: readonly Lexeme[], i: number): Read<Written> {
  if (isFraction(pieces, i)) return readFraction(pieces, i);
  if (isFraction(pieces, i + 1)) return readMixed(pieces, i, i + 1);
  if (JOINS.has(textAt(pieces, i + 1)) && isFraction(pieces, i + 2))
    return readMixed(pieces, i, i + 2);
  const decimal = readDecimal(textAt(pieces, i));
  if (!decimal.ok) return decimal;
  const { value, places } = decimal.value;
  return read({ value, step: ratio(1n, 10n ** BigInt(places)), next: i + 1 });
}
