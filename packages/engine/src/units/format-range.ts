import { HAIR, type LengthFormat, minusSign, printedStep, writeSteps } from './format-length.ts';
import type { LengthUnit } from './length-units.ts';
import { withUnit } from './length-words.ts';

export interface RangeFormat extends Omit<LengthFormat, 'unit'> {
  /** Shows a plus: for ranges of ease. */
  readonly signed?: boolean | undefined;
}

function writeEnd(steps: number, format: LengthFormat, signed: boolean): string {
  const plus = signed && steps > 0 ? (format.style === 'spoken' ? 'plus ' : '+') : '';
  return `${steps < 0 ? minusSign(format.style) : plus}${writeSteps(Math.abs(steps), format)}`;
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
  const [first, last] = [writeEnd(from, format, signed), writeEnd(to, format, signed)];
  if (from === to) return withUnit(last, format);
  const dash = style === undefined || style === 'glyph' ? '–' : '-';
  const join = from < 0 || signed || style === 'spoken' ? ' to ' : dash;
  return withUnit(`${first}${join}${last}`, format);
}
