import { bounds, type FitTarget } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { beginAgain, sizeMakes } from './afresh.ts';
import type { Bench, Draft } from './draft.ts';

/** A size of the pattern, or the stitches of one and the lengths of another. */
export interface Sized {
  readonly stitchesOf: number;
  readonly lengthsOf: number;
  readonly makes: readonly Make[];
  readonly chance: number;
  /** Sum over landmarks of the median's distance outside the wanted range, mm. */
  readonly miss: number;
}

const missOf =
  (bench: Bench, makes: readonly Make[]) =>
  (target: FitTarget): number => {
    const { low, high } = bounds(target);
    const { p50Mm } = bench.luck.range(target.at, makes[target.at]!, bench.forecast.judgeAt);
    return Math.max(0, low - p50Mm, p50Mm - high);
  };

export const fitted = (
  bench: Bench,
  { stitchesOf, lengthsOf }: Pick<Sized, 'stitchesOf' | 'lengthsOf'>,
  makes: readonly Make[],
): Sized => {
  const chance = bench.chanceOfSize(makes);
  const miss = bench.own.targets.map(missOf(bench, makes)).reduce((a, b) => a + b, 0);
  return { stitchesOf, lengthsOf, makes, chance, miss };
};

export const sized = (bench: Bench, stitchesOf: number, lengthsOf: number): Sized | null => {
  const judged = bench.own.targets.map(({ at }) => at);
  const makes = sizeMakes(bench.forecast, bench.luck, judged, stitchesOf, lengthsOf);
  return makes === null ? null : fitted(bench, { stitchesOf, lengthsOf }, makes);
};

/** Likeliest first; those without a chance by how far they miss. */
export const better = (a: Sized, b: Sized): number => b.chance - a.chance || a.miss - b.miss;

/** A blend is worth the trouble when it adds this much chance to the best size. */
export const BLEND_GAIN = 0.02;
export const start = ({ begun }: Bench): string => (begun > 0 ? 'Begin again' : 'Knit it');

export const draftOf = (
  bench: Bench,
  size: Sized,
): Pick<Draft, 'luck' | 'judged' | 'makes' | 'work'> => ({
  luck: bench.luck,
  judged: bench.own,
  makes: size.makes,
  work: beginAgain(bench, bench.luck, size.makes),
});

export const others = (bench: Bench): Sized[] =>
  bench.forecast.sizes
    .flatMap((_, at) => (at === bench.forecast.chosen ? [] : (sized(bench, at, at) ?? [])))
    .sort(better);

/** The best chance of a single size. */
export const pureChance = (bench: Bench): number => {
  const { chosen } = bench.forecast;
  const pure = [...others(bench), sized(bench, chosen, chosen)].filter((s) => s !== null);
  return Math.max(0, ...pure.map(({ chance }) => chance));
};
