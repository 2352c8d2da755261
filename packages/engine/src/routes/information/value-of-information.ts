import type { Priced } from '../price/price.ts';
import type { Measuring } from '../types.ts';
import type { Candidate } from './candidates.ts';
import { sampleInformation } from './sample-information.ts';

export interface Valued {
  /** Most worth first. */
  readonly measurings: readonly Measuring[];
  /** For each route the measurement that explains most of its doubt; null where none explains anything to speak of. */
  readonly first: readonly (string | null)[];
}

/** Less than this share of the doubt is not worth naming. */
const LEAST = 0.02;

/** What each cheap measurement is worth to the choice between the routes, best first as they are given. */
export const valueOfInformation = (
  routes: readonly Priced[],
  candidates: readonly Candidate[],
): Valued => {
  const worths = routes.map(({ utility }) => utility.draws);
  const found = candidates.map(({ id, name, readings }) => ({
    id,
    name,
    ...sampleInformation(worths, readings()),
  }));
  return {
    measurings: found
      .map(({ id, name, gain, chanceOfChange, explains }) => ({
        id,
        name,
        gain,
        chanceOfChange,
        explains: explains[0] ?? 0,
      }))
      .sort((a, b) => b.gain - a.gain || b.explains - a.explains),
    first: routes.map((_, k) => {
      const best = found.reduce<(typeof found)[number] | null>(
        (a, b) => (a === null || b.explains[k]! > a.explains[k]! ? b : a),
        null,
      );
      return best !== null && best.explains[k]! >= LEAST ? best.id : null;
    }),
  };
};
