import { quantilesInPlace, wholePercent } from '../stats/index.ts';
import type { Draws } from './draws.ts';
import { bounds, type FitTarget, missOf, share, shareAll, verdicts } from './fit.ts';
import type { ForecastQuestion, SizeFit } from './forecast-types.ts';
import { lengthsIn } from './state-lengths.ts';

/** A size with what speaks for it: the chance that all fits, and by how much it misses where not. */
export interface SizeScore {
  readonly fit: SizeFit;
  /** Sum over landmarks of the median's distance outside the wanted range, in millimetres. */
  readonly miss: number;
  readonly at: number;
}

/** A target's finished lengths in the chosen size begun afresh, and their median. */
interface Base {
  readonly target: FitTarget;
  readonly lengths: Float64Array;
  readonly median: number;
}

/** `scoreAt(i)`: how size i fares; null where it lacks a wanted measurement or nothing is wanted. */
export type ScoreAt = (at: number) => SizeScore | null;

/** Sizes of the pattern begun afresh, on the same draws. Another size is the chosen one scaled, pins and all. */
export const sizeScorer = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
): ScoreAt => {
  const bases = targets.map((t) => baseOf(question, draws, t));
  return (at) => {
    const ratios = targets.map((t) => sizeRatio(question, t, at));
    const known = ratios.filter((r): r is number => r !== null);
    if (targets.length === 0 || known.length < ratios.length) return null;
    return score(draws, bases, known, question.sizes[at] ?? '', at);
  };
};

const baseOf = (question: ForecastQuestion, draws: Draws, target: FitTarget): Base => {
  const lengths = lengthsIn(draws, draws.afresh[target.at]!, target.passage, question.judgeAt);
  return { target, lengths, median: quantilesInPlace(lengths.slice(), [0.5])[0]! };
};

/** How much larger another size is made than the chosen one: by its counts, else by its lengths. */
export const sizeRatio = (
  question: ForecastQuestion,
  { measurement: { wanted } }: Pick<FitTarget, 'measurement'>,
  at: number,
): number | null => {
  const ratio = (row: readonly (number | null)[]): number | null => {
    const here = row[at] ?? null;
    const chosen = row[question.chosen] ?? null;
    return here === null || chosen === null ? null : here / chosen;
  };
  const byCount = wanted.worked === 'counted' ? ratio(wanted.counts) : null;
  return byCount ?? ratio(wanted.values);
};

const score = (
  draws: Draws,
  bases: readonly Base[],
  ratios: readonly number[],
  size: string,
  at: number,
): SizeScore => {
  const judged = bases.map(({ target, lengths, median }, k) => {
    const verdict = verdicts(draws, target, lengths, ratios[k]);
    const p50Mm = median * ratios[k]!;
    const sides = { tooSmall: share(verdict, -1), tooLarge: share(verdict, 1) };
    return {
      verdict,
      fit: {
        landmark: target.wanted.landmark,
        p50Mm,
        chance: share(verdict, 0),
        miss: missOf(bounds(target), sides, p50Mm),
      },
    };
  });
  const fit: SizeFit = {
    size,
    chanceAll: shareAll(judged.map((j) => j.verdict)) ?? 0,
    landmarks: judged.map((j) => j.fit),
  };
  return { fit, miss: judged.reduce((sum, j) => sum + j.fit.miss.byMm, 0), at };
};

/** Misses are sums of lengths in mm: below this they differ by rounding. */
const ROUNDING_MM = 1e-6;

/**
 * The size with the best chance. Chances that are printed alike are told apart by how far the medians miss, so
 * that nine sizes that all fail are still put in order, and no size that is shown with more is passed over; of
 * sizes that are alike in both the chosen one.
 */
export const bestSize = (scores: readonly SizeScore[], chosen: number): SizeScore | null => {
  const top = Math.max(...scores.map(({ fit }) => wholePercent(fit.chanceAll)));
  const near = scores.filter(({ fit }) => wholePercent(fit.chanceAll) === top);
  const least = Math.min(...near.map(({ miss }) => miss));
  const alike = near.filter(({ miss }) => miss <= least + ROUNDING_MM);
  return alike.find(({ at }) => at === chosen) ?? alike[0] ?? null;
};
