import { quantilesInPlace, wholePercent } from '../stats/index.ts';
import type { Draws } from './draws.ts';
import { bounds, type FitTarget, missOf, share, shareAll, verdicts } from './fit.ts';
import type { ForecastQuestion, SizeFit } from './forecast-types.ts';
import type { Known } from './known.ts';
import { passagesOf, type SizeOf } from './passages.ts';
import type { SizedMeasurement } from './size-model.ts';
import { lengthsIn, type Passage, scaledBy } from './state-lengths.ts';

/** A size with what speaks for it: the chance that all fits, and by how much it misses where not. */
export interface SizeScore {
  readonly fit: SizeFit;
  /** Sum over landmarks of the median's distance outside the wanted range, in millimetres. */
  readonly miss: number;
  readonly at: number;
}

/** One measurement of a size begun afresh: how much larger it is than in the chosen one, and how it passes. */
export interface InSize {
  readonly factor: number;
  readonly passage: Passage;
}

/**
 * Measurements of sizes of the pattern begun afresh, pinned and hung as they would be had that size been chosen;
 * null where the size lacks it.
 */
export const inSizes = (question: ForecastQuestion, known: Known) => {
  const { measurements } = known.model;
  const passages = passagesOf(question, known.model);
  return (size: SizeOf): (InSize | null)[] => {
    const factors = measurements.map((m) => sizeRatio(question, m, size[m.wanted.direction]));
    const rest = known.restMm.map((mm, k) => (factors[k] === null ? null : mm * factors[k]!));
    return passages(rest, size).passages.map((passage, k) => {
      const factor = factors[k]!;
      return factor === null ? null : { factor, passage };
    });
  };
};

/** How much larger another size is made than the chosen one: by its counts, else by its lengths. */
const sizeRatio = (
  question: ForecastQuestion,
  { wanted }: SizedMeasurement,
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

/** Lengths of a measurement made as in the chosen size, and their median. */
interface Base {
  readonly lengths: Float64Array;
  readonly median: number;
}

/** `scoreAt(i)`: how size i fares; null where it lacks a wanted measurement or nothing is wanted. */
export type ScoreAt = (at: number) => SizeScore | null;

/** Sizes of the pattern begun afresh, on the same draws. */
export const sizeScorer = (
  question: ForecastQuestion,
  known: Known,
  draws: Draws,
  targets: readonly FitTarget[],
): ScoreAt => {
  const sized = inSizes(question, known);
  const bases = new Map<string, Base>();
  /** Sizes that are pinned and hung alike differ in size alone. */
  const baseOf = (at: number, passage: Passage): Base => {
    const { judgeAt } = question;
    const pins = judgeAt === 'rewashed' ? null : passage.pinnedTo;
    const key = `${at} ${pins} ${judgeAt === 'worn' ? passage.hang : 0}`;
    const had = bases.get(key);
    if (had !== undefined) return had;
    const lengths = lengthsIn(draws, draws.afresh[at]!, passage, judgeAt);
    const base = { lengths, median: quantilesInPlace(lengths.slice(), [0.5])[0]! };
    bases.set(key, base);
    return base;
  };
  return (at) => {
    const all = sized({ width: at, length: at });
    const made = targets.flatMap((target) => all[target.at] ?? []);
    if (targets.length === 0 || made.length < targets.length) return null;
    const judged = targets.map((target, k) => {
      const { factor, passage } = made[k]!;
      return judge(draws, target, baseOf(target.at, scaledBy(passage, 1 / factor)), factor);
    });
    const fit: SizeFit = {
      size: question.sizes[at] ?? '',
      chanceAll: shareAll(judged.map((j) => j.verdict)) ?? 0,
      landmarks: judged.map((j) => j.fit),
    };
    return { fit, miss: judged.reduce((sum, j) => sum + j.fit.miss.byMm, 0), at };
  };
};

const judge = (draws: Draws, target: FitTarget, { lengths, median }: Base, factor: number) => {
  const verdict = verdicts(draws, target, lengths, factor);
  const p50Mm = factor * median;
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
