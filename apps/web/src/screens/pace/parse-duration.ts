import type { Result } from '@dryflat/engine/units';

const CLOCK = /^(\d{1,4}):([0-5]\d)$/;
const WORDS =
  /^(?:(\d{1,4}(?:[.,]\d{1,2})?)\s*h(?:ours?|rs?)?)?\s*(?:(\d{1,4})\s*m(?:in(?:utes?)?)?)?$/i;
const BARE = /^\d{1,5}(?:[.,]\d{1,2})?$/;

const number = (text: string | undefined): number => Number((text ?? '0').replace(',', '.'));

/** Minutes of `25`, `1:05`, `1 h 5`, `1.5 h`, `40 min`; a bare number is in `bare`. Null where unreadable. */
const minutesOf = (text: string, bare: 'minutes' | 'hours'): number | null => {
  const clock = CLOCK.exec(text);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2]);
  if (BARE.test(text)) return number(text) * (bare === 'hours' ? 60 : 1);
  const worded = WORDS.exec(text);
  return worded && (worded[1] || worded[2]) ? number(worded[1]) * 60 + number(worded[2]) : null;
};

export interface DurationBounds {
  readonly bare: 'minutes' | 'hours';
  /** Both in minutes; the least is allowed too. */
  readonly least: number;
  readonly most: number;
}

/** A length of time in minutes, as people write it. */
export const parseDuration = (
  given: string,
  field: string,
  { bare, least, most }: DurationBounds,
): Result<number> => {
  const value = minutesOf(given.trim(), bare);
  const fault = (code: string, problem: string, mend: string): Result<number> => ({
    ok: false,
    faults: [{ code, field, given, problem, mend }],
  });
  if (value === null)
    return fault('time-unreadable', 'this is not a length of time', 'Type 25, 1:05 or 1.5 h.');
  if (value < least || value > most)
    return fault(
      'time-out-of-range',
      `this has to lie between ${printDuration(least)} and ${printDuration(most)}`,
      'Type how long it takes.',
    );
  return { ok: true, value };
};

/** `25 min`, `1 h`, `1 h 05 min`. */
export const printDuration = (minutes: number): string => {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${`${rest}`.padStart(2, '0')} min`;
};
