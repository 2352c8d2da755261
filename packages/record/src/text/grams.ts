import type { Yarn } from '../schema/index.ts';

/** Grams of a yarn at hand; null unless every lot says what a skein weighs. */
export const gramsOf = ({ lots }: Yarn): number | null => {
  const masses = lots.map(({ skeins, gramsEach }) =>
    gramsEach === undefined ? null : skeins * gramsEach,
  );
  return masses.length === 0 || masses.includes(null)
    ? null
    : masses.reduce<number>((sum, mass) => sum + (mass ?? 0), 0);
};
