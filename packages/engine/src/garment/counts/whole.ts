import type { Fault } from '../../units/index.ts';

/** The most stitches or rows that are asked for: far beyond any garment, short of running for ever. */
export const MOST_COUNT = 100_000;

/** A number rounded so that what differs by the rounding of doubles is the same; for decisions only. */
export const settled = (value: number): number => Math.round(value * 1e7) / 1e7;

export const isWhole = (value: number, least: number): boolean =>
  Number.isInteger(value) && value >= least && value <= MOST_COUNT;

export const notWhole = (field: string, given: number, what: string, least: number): Fault => ({
  code: 'count-not-whole',
  field,
  given: String(given),
  problem: `${what} is not a whole number from ${least} to ${MOST_COUNT}`,
  mend: `Give a whole number, ${least} or more.`,
});

/** A fault for each that is not a whole number of at least `least`. */
export const wholeFaults = (
  asked: readonly (readonly [field: string, given: number, what: string, least: number])[],
): Fault[] =>
  asked.flatMap(([field, given, what, least]) =>
    isWhole(given, least) ? [] : [notWhole(field, given, what, least)],
  );

export const notLength = (field: string, given: number, what: string): Fault => ({
  code: 'count-length',
  field,
  given: String(given),
  problem: `${what} is not a length above zero and below 100 m`,
  mend: 'Give it in millimetres, more than 0.',
});

export const lengthFaults = (
  asked: readonly (readonly [field: string, given: number, what: string])[],
): Fault[] =>
  asked.flatMap(([field, given, what]) =>
    given > 0 && given < 100_000 ? [] : [notLength(field, given, what)],
  );
