import type { ForecastQuestion } from '@dryflat/engine/garment';
import type { Yarn } from '../schema/index.ts';
import { gramsOf } from '../text/grams.ts';

type YarnPart = Pick<ForecastQuestion, 'fibres' | 'treatment' | 'weightClass' | 'metresPer100g'>;

/** Share of each yarn in the fabric, summing to 1: by mass where all masses are known, else alike. */
const yarnShares = (yarns: readonly Yarn[]): number[] => {
  const masses = yarns.map(gramsOf);
  const total = masses.reduce<number>((sum, mass) => sum + (mass ?? 0), 0);
  return masses.includes(null) || total === 0
    ? yarns.map(() => 1 / yarns.length)
    : masses.map((mass) => (mass ?? 0) / total);
};

/** Fibres of the whole fabric with their shares, 0 to 1; a part that no label tells is `other`. */
const blend = (yarns: readonly Yarn[]): ForecastQuestion['fibres'] => {
  if (yarns.length === 0) return [{ fibre: 'other', share: 1 }];
  const shares = yarnShares(yarns);
  const sums = new Map<ForecastQuestion['fibres'][number]['fibre'], number>();
  yarns.forEach((yarn, at) => {
    for (const { fibre, share } of withinYarn(yarn))
      sums.set(fibre, (sums.get(fibre) ?? 0) + share * (shares[at] ?? 0));
  });
  return [...sums].map(([fibre, share]) => ({ fibre, share }));
};

const withinYarn = ({ fibres }: Yarn): ForecastQuestion['fibres'] => {
  const total = fibres.reduce((sum, { percent }) => sum + percent, 0);
  return total === 0
    ? [{ fibre: 'other', share: 1 }]
    : fibres.map(({ fibre, percent }) => ({ fibre, share: percent / total }));
};

/** The yarns as one: blended fibres, the treatment if they agree, weight and length of the main yarn. */
export const yarnPart = (yarns: readonly Yarn[]): YarnPart => {
  const shares = yarnShares(yarns);
  const main = yarns[shares.indexOf(Math.max(...shares))];
  const treatments = new Set(yarns.map(({ treatment }) => treatment));
  return {
    fibres: blend(yarns),
    treatment: treatments.size === 1 && main !== undefined ? main.treatment : 'unknown',
    weightClass: main?.weightClass ?? null,
    metresPer100g: main?.metresPer100g ?? null,
  };
};
