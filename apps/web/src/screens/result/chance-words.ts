import { percentText, wholePercent } from '@dryflat/engine/stats';

/** Fractions that people count in: halves to tenths, then one in twenty and rarer. */
const SPOKEN: readonly (readonly [number, number])[] = [
  ...[2, 3, 4, 5, 6, 8, 10, 20, 30, 50, 100].map((of) => [1, of] as const),
  ...[3, 4, 5, 6, 8, 10, 20, 30, 50, 100].map((of) => [of - 1, of] as const),
  [2, 5],
  [3, 5],
  [3, 10],
  [7, 10],
];

/**
 * A chance, 0 to 1, as people say it: `about 3 in 4`. The fraction is the one whose odds come
 * nearest; under 1 % and over 99 % nothing more is claimed.
 */
export const chanceWords = (chance: number): string => {
  const whole = wholePercent(chance);
  if (whole === 0) return 'less than 1 in 100';
  if (whole === 100) return 'more than 99 in 100';
  const odds = (p: number): number => Math.log(p / (1 - p));
  const off = ([part, of]: readonly [number, number]): number =>
    Math.abs(odds(part / of) - odds(chance));
  const [part, of] = SPOKEN.reduce((a, b) => (off(b) < off(a) ? b : a));
  return `about ${part} in ${of}`;
};

/**
 * `74 %`; never 0 or 100, which nobody knows: `under 1 %`, `over 99 %`. The number and its sign
 * stay on one line.
 */
export const chancePercent = (chance: number): string =>
  percentText(chance).replace(/ %$/, '\u00a0%');
