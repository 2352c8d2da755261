import type { Wearer } from '../schema/index.ts';
import { bodyRange } from './body-range.ts';
import { girthMm, type Span } from './girths.ts';

/**
 * A garment's girth is seldom under three quarters of the body's (a hat or a sock stretched hard) or
 * over 1.6 times (a very wide pullover). Common practice, no source.
 */
const LEAST_OF_BODY = 0.75;
const MOST_OF_BODY = 1.6;
/** Where only the group is known: patterns stop soon after its largest body. Common practice, no source. */
const MOST_OF_GROUP = 1.15;
/** A tape on the garment seldom differs more than this from what the pattern says. Common practice, no source. */
const LEAST_OF_TARGET = 0.7;
const MOST_OF_TARGET = 1.4;

/** What a number can be held against, best first; each is a girth around, in millimetres. */
export interface SpanClues {
  /** What the pattern says of the same measurement, for a tape on the garment. */
  readonly targetMm: number | null;
  /** The body's girth under it. */
  readonly bodyMm: number | null;
  /** Who it is for and which of the body's girths it is, for when no tape was taken. */
  readonly group: Wearer['group'];
  readonly body: string | null;
}

export type ClueKind = 'target' | 'body' | 'group' | 'none';

/** The girths around that a clue lets pass, with the clue that says so; null when there is none. */
const passing = (clues: SpanClues): { kind: ClueKind; lowMm: number; highMm: number } => {
  if (clues.targetMm !== null)
    return {
      kind: 'target',
      lowMm: clues.targetMm * LEAST_OF_TARGET,
      highMm: clues.targetMm * MOST_OF_TARGET,
    };
  if (clues.bodyMm !== null)
    return {
      kind: 'body',
      lowMm: clues.bodyMm * LEAST_OF_BODY,
      highMm: clues.bodyMm * MOST_OF_BODY,
    };
  const range = clues.body === null ? null : bodyRange(clues.group, clues.body);
  return range === null
    ? { kind: 'none', lowMm: 0, highMm: Number.POSITIVE_INFINITY }
    : { kind: 'group', lowMm: range[0] * LEAST_OF_BODY, highMm: range[1] * MOST_OF_GROUP };
};

/** What clues say of a number. */
export interface Likely {
  /** The one reading that makes sense; null when both or neither do. */
  readonly likely: Span | null;
  /** The clue that said so. */
  readonly by: ClueKind;
  /** True when the number makes no sense either way. */
  readonly neither: boolean;
}

/** Which way a number of millimetres reads. */
export const likelySpan = (valueMm: number, clues: SpanClues): Likely => {
  const { kind, lowMm, highMm } = passing(clues);
  const sensible = (['flat', 'around'] as const).filter((span) => {
    const girth = girthMm(valueMm, span);
    return girth >= lowMm && girth <= highMm;
  });
  return {
    likely: sensible.length === 1 ? (sensible[0] ?? null) : null,
    by: kind,
    neither: sensible.length === 0,
  };
};
