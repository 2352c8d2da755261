import type { Weights } from '@dryflat/record';

/** How much something counts, in words that a thumb can choose. */
export const LEVELS = [
  { value: 'not', label: 'Not at all', weight: 0 },
  { value: 'some', label: 'Some', weight: 0.5 },
  { value: 'much', label: 'Much', weight: 1 },
] as const;

export type Level = (typeof LEVELS)[number]['value'];

/** The level that a weight is nearest to, 0 to 1; the lesser where two are. */
export const levelOf = (weight: number): Level =>
  LEVELS.reduce((a, b) => (Math.abs(b.weight - weight) < Math.abs(a.weight - weight) ? b : a))
    .value;

/** The weights with one of them at a level; those not spoken of stay as they are. */
export const withLevel = (weights: Weights, what: keyof Weights, level: Level): Weights => ({
  ...weights,
  [what]: LEVELS.find(({ value }) => value === level)?.weight ?? weights[what],
});
