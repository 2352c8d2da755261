import { HAIR, type LengthFormat, minusSign, printedStep, writeSteps } from './format-length.ts';
import type { LengthUnit } from './length-units.ts';
import { withUnit } from './length-words.ts';

export interface RangeFormat extends Omit<LengthFormat, 'unit'> {
  /** Shows a plus: for ranges of ease. */
  readonly signed?: boolean | undefined;
}

function writeEnd(steps: number, format: LengthFormat, signed: boolean, tenths: boolean): string {
  const plus = signed && steps > 0 ? (format.style === 'spoken' ? 'plus ' : '+') : '';
  const whole = tenths && steps % 10 === 0 ? `${format.decimalMark ?? '.'}0` : '';
  return `${steps < 0 ? minusSign(format.style) : plus}${writeSteps(Math.abs(steps), format)}${whole}`;
}

/**
 * A range rounded outwards to the marks of the tape, so that it never looks surer than it is:
 * `13⅜–13¾ in`; `−2 to +1 in` where an end is below zero or `signed`. One number where both ends lie
 * on one mark. `low` ≤ `high`, millimetres.
 */
export function formatRange(
  low: number,
  high: number,
  unit: LengthUnit,
  options: RangeFormat = {},
): string {
  if (!(low <= high)) throw new RangeError(`a range from ${low} to ${high} is not one`);
  const format = { ...options, unit };
  const step = printedStep(format);
  const from = Math.floor(low / step + HAIR);
  const to = Math.ceil(high / step - HAIR);
  const { signed = false, style } = options;
  if (from === to) return withUnit(writeEnd(to, format, signed, false), format);
  // Both ends of a range are printed as finely as the finer one: 96.6–105.0, but 96–105.
  const tenths = unit !== 'in' && (from % 10 !== 0 || to % 10 !== 0);
  const [first, last] = [from, to].map((steps) => writeEnd(steps, format, signed, tenths));
  const dash = style === undefined || style === 'glyph' ? '–' : '-';
  const join = from < 0 || signed || style === 'spoken' ? ' to ' : dash;
  return withUnit(`${first}${join}${last}`, format);
}
