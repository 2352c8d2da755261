import type { Fault, Result } from './fault.ts';
import { fail } from './fault.ts';

/** A fault before it knows its field: what the small readers return. */
export interface Problem {
  readonly code: string;
  readonly problem: string;
  readonly mend: string;
}

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

export const read = <T>(value: T): Read<T> => ({ ok: true, value });
export const unread = (code: string, problem: string, mend: string): Read<never> => ({
  ok: false,
  problem: { code, problem, mend },
});

const LONGEST_SHOWN = 60;

/** What was given, short enough for one line of a message. */
export function shown(text: string): string {
  const line = text.trim().replace(/\s+/g, ' ');
  return line.length > LONGEST_SHOWN ? `${line.slice(0, LONGEST_SHOWN)}…` : line;
}

/** Where a reader was used: the field, what was given, and the kind of quantity for the fault's code. */
export interface Asked {
  readonly field: string;
  readonly given: string;
  readonly noun: string;
}

export const faultOf = (
  { code, problem, mend }: Problem,
  { field, given, noun }: Asked,
): Fault => ({
  code: `${noun.replaceAll(' ', '-')}-${code}`,
  field,
  given: shown(given),
  problem,
  mend,
});

export const asResult = <T>(outcome: Read<T>, asked: Asked): Result<T> =>
  outcome.ok ? outcome : fail(faultOf(outcome.problem, asked));
