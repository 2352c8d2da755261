import { formatLength, type LengthFormat, nearestStep, printedStep } from './format-length.ts';

/** Ease and other differences: `+2 in`, `−5 cm`, `0 cm`; spoken `plus 2 inches`. */
export function formatSigned(length: number, format: LengthFormat): string {
  const printed = formatLength(length, format);
  if (length <= 0 || nearestStep(length, printedStep(format)) === 0) return printed;
  return format.style === 'spoken' ? `plus ${printed}` : `+${printed}`;
}
