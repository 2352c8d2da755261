import { type WeightClass, weightClassForMetres } from '@dryflat/engine/textile';
import type { Yarn } from '@dryflat/record';

/** Metres in 100 g by the first lot whose skein has both; null where none has. */
export const metresByLots = ({ lots }: Yarn): number | null => {
  const told = lots.find(({ gramsEach, metresEach }) => gramsEach && metresEach);
  return told?.gramsEach && told.metresEach ? (told.metresEach / told.gramsEach) * 100 : null;
};

/** The class that the length in 100 g speaks for; null without one, or where two fit alike. */
export const classByMetres = ({ metresPer100g }: Yarn): WeightClass | null => {
  if (metresPer100g === undefined) return null;
  const { classes, inside } = weightClassForMetres(metresPer100g);
  return inside && classes.length === 1 ? (classes[0] ?? null) : null;
};

/** Whether two yarn lengths are the same to a metre in a hundred, finer than ball bands are true. */
export const sameLength = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 0.01 * Math.max(a, b);
