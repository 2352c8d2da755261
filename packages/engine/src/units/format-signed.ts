import { formatLength, type LengthFormat, nearestStep, printedStep } from './format-length.ts';

/** Ease and other differences: `+2 in`, `−5 cm`, `0 cm`; spoken `plus 2 inches`. */
export function formatSigned(length: number, format: LengthFormat): string {
  const printed = formatLength(length, format);
  if (length <= 0 || nearestStep(length, printedStep(format)) === 0) return printed;
  return format.style === 'spoken' ? `plus ${printed}` : `+${printed}`;
}

/**
 * What a length is off by, as far as both are printed: the difference of the printed numbers, so that
 * wanted, is and off by add up on the page. Lengths are not negative.
 */
export function formatOffBy(length: number, wanted: number, format: LengthFormat): string {
  const step = printedStep(format);
  const steps = nearestStep(length, step) - nearestStep(wanted, step);
  return formatSigned(steps * step, format);
}
