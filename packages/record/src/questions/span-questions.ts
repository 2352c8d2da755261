import type { GarmentRecord } from '../schema/index.ts';
import { girthMm, type Span } from '../spans/girths.ts';
import { type ClueKind, likelySpan, type SpanClues } from '../spans/likely-span.ts';
import { type NumberWithSpan, numbersWithSpan } from '../spans/numbers-with-span.ts';
import { lengthToken } from '../text/lengths.ts';

/** What a number would mean read one way. */
export interface SpanReading {
  readonly flatMm: number;
  readonly aroundMm: number;
  /** Around minus the body; null where no body measurement was given. */
  readonly easeMm: number | null;
  /** One sentence; lengths are `{mm:123.4}` tokens. */
  readonly sentence: string;
}

/** A number that nobody has said flat or around of yet, with what each answer would mean. */
export interface SpanQuestion {
  /** Path of the field that the answer goes into: `pattern.measurements[0].span`. */
  readonly field: string;
  readonly name: string;
  readonly landmark: string;
  readonly valueMm: number;
  /** Size that the number belongs to, for a row of the pattern's table. */
  readonly size: string | null;
  readonly bodyMm: number | null;
  readonly flat: SpanReading;
  readonly around: SpanReading;
  /** The one reading that makes sense; null when both or neither do. Offered, never taken by itself. */
  readonly likely: Span | null;
  /** Why, one sentence; lengths are `{mm:123.4}` tokens. */
  readonly why: string;
}

/** Every number of the record that waits for `flat` or `around`. */
export const questionsOf = (record: GarmentRecord): SpanQuestion[] =>
  numbersWithSpan(record)
    .filter(({ span }) => span === null)
    .map(question);

const question = (number: NumberWithSpan): SpanQuestion => {
  const { likely, by } = likelySpan(number.valueMm, number.clues);
  const flat = readAs(number, 'flat');
  const around = readAs(number, 'around');
  return {
    field: `${number.path}.span`,
    name: number.name,
    landmark: number.landmark,
    valueMm: number.valueMm,
    size: number.size,
    bodyMm: number.clues.bodyMm,
    flat,
    around,
    likely,
    why: reason(likely, by, number.clues, likely === 'flat' ? around : flat),
  };
};

const readAs = ({ valueMm, clues }: NumberWithSpan, span: Span): SpanReading => {
  const aroundMm = girthMm(valueMm, span);
  const easeMm = clues.bodyMm === null ? null : aroundMm - clues.bodyMm;
  const other =
    span === 'flat'
      ? `it goes ${lengthToken(aroundMm)} around`
      : `it lies ${lengthToken(aroundMm / 2)} wide when flat`;
  return {
    flatMm: aroundMm / 2,
    aroundMm,
    easeMm,
    sentence: `If it is ${span}, ${other}${againstBody(easeMm, clues.bodyMm)}.`,
  };
};

const againstBody = (easeMm: number | null, bodyMm: number | null): string => {
  if (easeMm === null || bodyMm === null) return '';
  const body = `the body's ${lengthToken(bodyMm)}`;
  if (Math.abs(easeMm) < 1) return `, the same as ${body}`;
  return `, ${lengthToken(Math.abs(easeMm))} ${easeMm > 0 ? 'more' : 'less'} than ${body}`;
};

const reason = (
  likely: Span | null,
  by: ClueKind,
  clues: SpanClues,
  unlikely: SpanReading,
): string => {
  if (by === 'none') return 'There is nothing to hold it against, so only you can say.';
  if (likely === null)
    return `${holdAgainst(by, clues)} does not tell which is meant, so only you can say.`;
  return `It reads like ${likely}: the other way it would be ${lengthToken(unlikely.aroundMm)} around, which ${holdAgainst(by, clues).toLowerCase()} makes unlikely.`;
};

const holdAgainst = (by: ClueKind, { targetMm, bodyMm, group }: SpanClues): string => {
  if (by === 'target') return `The pattern's ${lengthToken(targetMm ?? 0)} around`;
  if (by === 'body') return `A body of ${lengthToken(bodyMm ?? 0)}`;
  return `The body of a ${group}`;
};
