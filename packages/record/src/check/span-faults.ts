import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '../schema/index.ts';
import { girthMm, type Span } from '../spans/girths.ts';
import { type ClueKind, likelySpan } from '../spans/likely-span.ts';
import { type NumberWithSpan, numbersWithSpan } from '../spans/numbers-with-span.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/** Numbers that nobody has said flat or around of, and numbers that read like the other of the two. */
export const spanFaults = (record: GarmentRecord): Fault[] =>
  numbersWithSpan(record).flatMap(judge);

const judge = (number: NumberWithSpan): Fault[] => {
  const { likely, by, neither } = likelySpan(number.valueMm, number.clues);
  if (number.span === null) return [missingSpan(number, likely)];
  if (neither) return [fitsNothing(number, number.span, by)];
  return likely === null || likely === number.span
    ? []
    : [givesItselfAway(number, number.span, likely)];
};

const fitsNothing = (number: NumberWithSpan, span: Span, by: ClueKind): Fault => {
  const { targetMm, bodyMm, group } = number.clues;
  const against =
    by === 'target'
      ? `the pattern's ${lengthText(targetMm ?? 0)}`
      : by === 'body'
        ? `the body's ${lengthText(bodyMm ?? 0)}`
        : `what a ${group} wears`;
  return fault(
    'doubt-girth',
    number.path,
    number.valueMm,
    `"${number.name}" of ${lengthText(girthMm(number.valueMm, span))} around is far from ${against}`,
    'Check the number and its unit.',
  );
};

const missingSpan = ({ path, name, valueMm }: NumberWithSpan, likely: Span | null): Fault => {
  const value = lengthText(valueMm);
  return fault(
    'question-span',
    `${path}.span`,
    null,
    path.startsWith('pattern.')
      ? `"${name}" is left out until you say whether ${value} is flat or around`
      : `${value} of "${name}" is left out until you say whether it is flat or around`,
    likely === null
      ? 'Write "flat" or "around".'
      : `Write "flat" or "around"; it reads like ${likely}.`,
  );
};

const givesItselfAway = (number: NumberWithSpan, span: Span, likely: Span): Fault => {
  const said = lengthText(girthMm(number.valueMm, span));
  const meant = lengthText(girthMm(number.valueMm, likely));
  return fault(
    'doubt-span',
    `${number.path}.span`,
    span,
    `${lengthText(number.valueMm)} of "${number.name}" reads like ${likely}: taken as ${span} the garment goes ${said} around, taken as ${likely} it goes ${meant}`,
    `Write "${likely}" if that is meant; leave it if not.`,
  );
};
