import { type LengthFormat, minusSign } from './format-length.ts';
import { MM_PER_UNIT } from './length-units.ts';
import { withUnit } from './length-words.ts';
import {
  fromNumber,
  nearestWhole,
  over,
  type Rational,
  ratio,
  times,
  toNumber,
} from './rational.ts';
import { asAscii, asGlyphs, asWords, mixed } from './tape-fractions.ts';

const WRITE = { glyph: asGlyphs, ascii: asAscii, spoken: asWords } as const;
const FINEST_TAPE = 64;
/** A double of 0.001 mm or more needs at most 17 significant digits. */
const MOST_PLACES = 24;

/** Does `count / parts` of a unit have `length` as its nearest double of millimetres? */
const hits = (length: number, count: bigint, parts: bigint, unit: Rational): boolean =>
  toNumber(times(ratio(count, parts), unit)) === length;

/** The fraction of a tape, down to 1/64, that is the length exactly; null where there is none. */
function onTape(length: number, { style = 'glyph' }: LengthFormat): string | null {
  const count = Math.round((length / 25.4) * FINEST_TAPE);
  if (!Number.isSafeInteger(count)) return null;
  if (!hits(length, BigInt(count), BigInt(FINEST_TAPE), MM_PER_UNIT.in)) return null;
  return WRITE[style](mixed(count, FINEST_TAPE));
}

function placed(digits: bigint, places: number): string {
  const text = `${digits}`.padStart(places + 1, '0');
  const cut = text.length - places;
  return places === 0 ? text : `${text.slice(0, cut)}.${text.slice(cut)}`;
}

/** The shortest decimal whose length is this double again. */
function shortestDecimal(length: number, unit: Rational): string {
  const value = over(fromNumber(length), unit);
  for (let places = 0; places < MOST_PLACES; places++) {
    const parts = 10n ** BigInt(places);
    const digits = nearestWhole(times(value, ratio(parts)));
    if (hits(length, digits, parts, unit)) return placed(digits, places);
  }
  return placed(nearestWhole(times(value, ratio(10n ** BigInt(MOST_PLACES)))), MOST_PLACES);
}

/**
 * A length with nothing rounded away: reading it back gives the same double. Inches print as a
 * fraction down to 1/64 where that is exact, else as a decimal: `13⅜ in`, `13.4 in`, `34.56 cm`.
 */
export function formatExact(length: number, format: LengthFormat): string {
  const { unit, style, decimalMark = '.' } = format;
  const magnitude = Math.abs(length);
  const tape = unit === 'in' ? onTape(magnitude, format) : null;
  const decimal = () => shortestDecimal(magnitude, MM_PER_UNIT[unit]).replace('.', decimalMark);
  const sign = length < 0 ? minusSign(style) : '';
  return withUnit(`${sign}${tape ?? decimal()}`, format);
}
