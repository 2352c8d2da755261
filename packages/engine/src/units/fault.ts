/**
 * An expected failure: something the knitter gave cannot be used as it stands. A fault is a value,
 * never thrown; it names the field, what was given and how to mend it. Bugs throw.
 */
export interface Fault {
  /** Stable, for tests and for callers that react: `length-unreadable`, `question-span`. */
  readonly code: string;
  /** Path of the field as the knitter or the file knows it: `evidence[0].readings[1].count`. */
  readonly field: string;
  /** What was given, as text; empty when nothing was. */
  readonly given: string;
  /** What is wrong with it, one sentence. */
  readonly problem: string;
  /** How to mend it, one sentence in the imperative. */
  readonly mend: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (...faults: readonly Fault[]): Result<never> => ({ ok: false, faults });

/** One line a person can act on: `field: problem (given: …). Mend.` */
export const explain = (fault: Fault): string =>
  `${fault.field}: ${fault.problem}${fault.given === '' ? '' : ` (given: ${fault.given})`}. ${fault.mend}`;
