import type { LengthUnit } from './length-units.ts';
import { type DecimalMark, type Style, withUnit } from './length-words.ts';
import {
  asAscii,
  asGlyphs,
  asWords,
  type Mixed,
  mixed,
  type TapeFraction,
} from './tape-fractions.ts';

export interface LengthFormat {
  readonly unit: LengthUnit;
  /** Finest part of an inch, 8 by default; no meaning in cm and mm. */
  readonly fraction?: TapeFraction | undefined;
  /** `glyph` 13⅜ in (default); `ascii` 13 3/8 in; `spoken` 13 and 3 eighths inches. */
  readonly style?: Style | undefined;
  /** Spelling of the spoken units. */
  readonly words?: 'us' | 'uk' | undefined;
  readonly decimalMark?: DecimalMark | undefined;
  /** Leaves the unit out. */
  readonly bare?: boolean | undefined;
}

const WRITE: Readonly<Record<Style, (part: Mixed) => string>> = {
  glyph: asGlyphs,
  ascii: asAscii,
  spoken: asWords,
};

/** Millimetres in one step of the printed number: ⅛ in, 1 mm in cm, 0.1 mm in mm. */
export const printedStep = ({ unit, fraction = 8 }: LengthFormat): number =>
  unit === 'in' ? 25.4 / fraction : unit === 'cm' ? 1 : 0.1;

/** A whole number of steps as text without sign or unit. */
export function writeSteps(steps: number, format: LengthFormat): string {
  const { unit, fraction = 8, style = 'glyph', decimalMark = '.' } = format;
  if (unit === 'in') return WRITE[style](mixed(steps, fraction));
  return `${steps / 10}`.replace('.', decimalMark);
}

export const minusSign = (style: Style | undefined): string =>
  style === 'ascii' ? '-' : style === 'spoken' ? 'minus ' : '−';

/**
 * A length to the nearest step of a tape: `13⅜ in`, `34.5 cm`, `420 mm`. The printed number is never
 * more than half a step off; where that hides too much, use `formatExact`. Halves go away from zero.
 */
export function formatLength(length: number, format: LengthFormat): string {
  if (!Number.isFinite(length)) throw new RangeError(`a length of ${length} cannot be printed`);
  const steps = nearestStep(Math.abs(length), printedStep(format));
  const sign = length < 0 && steps > 0 ? minusSign(format.style) : '';
  return withUnit(`${sign}${writeSteps(steps, format)}`, format);
}

/** Doubles land a hair beside a tie or a mark; this much of a step counts as on it. */
export const HAIR = 1e-9;

export const nearestStep = (length: number, step: number): number =>
  Math.floor(length / step + 0.5 + HAIR);
