import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '../schema/index.ts';
import { girthMm, type Span } from '../spans/girths.ts';
import { likelySpan } from '../spans/likely-span.ts';
import { type NumberWithSpan, numbersWithSpan } from '../spans/numbers-with-span.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/** Numbers that nobody has said flat or around of, and numbers that read like the other of the two. */
export const spanFaults = (record: GarmentRecord): Fault[] =>
  numbersWithSpan(record).flatMap(judge);

const judge = (number: NumberWithSpan): Fault[] => {
  const { likely } = likelySpan(number.valueMm, number.clues);
  if (number.span === null) return [missingSpan(number, likely)];
  return likely === null || likely === number.span
    ? []
    : [givesItselfAway(number, number.span, likely)];
};

const missingSpan = ({ path, name, valueMm }: NumberWithSpan, likely: Span | null): Fault =>
  fault(
    'missing-span',
    `${path}.span`,
    null,
    `nobody has said whether ${lengthText(valueMm)} of "${name}" is flat or around`,
    likely === null
      ? 'Write "flat" or "around".'
      : `Write "flat" or "around"; it reads like ${likely}.`,
  );

const givesItselfAway = (number: NumberWithSpan, span: Span, likely: Span): Fault => {
  const said = lengthText(girthMm(number.valueMm, span));
  const meant = lengthText(girthMm(number.valueMm, likely));
  return fault(
    'doubt-span',
    `${number.path}.span`,
    span,
    `${lengthText(number.valueMm)} of "${number.name}" reads like ${likely}: as ${span} it would be ${said} around, as ${likely} ${meant}`,
    `Write "${likely}" if that is meant; leave it if not.`,
  );
};
