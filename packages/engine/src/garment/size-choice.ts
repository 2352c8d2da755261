import { quantilesInPlace } from '../stats/index.ts';
import type { Draws } from './draws.ts';
import { bounds, type FitTarget, share, shareAll, verdicts } from './fit.ts';
import type { ForecastQuestion, SizeFit } from './forecast-types.ts';
import { lengthsIn } from './state-lengths.ts';

/** A size with what speaks for it: the chance that all fits, and by how much it misses where not. */
export interface SizeScore {
  readonly fit: SizeFit;
  /** Sum over landmarks of the median's distance outside the wanted range, in millimetres. */
  readonly miss: number;
  /** Landmark whose median lies farthest out, with its signed distance; null where none does. */
  readonly worst: { readonly landmark: string; readonly byMm: number } | null;
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

/**
 * Sizes of the pattern begun afresh at this gauge, on the same draws. `shift` moves the log pitch:
 * a what-if of another needle. Another size is the chosen one scaled, pins and all.
 */
export const sizeScorer = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
  shift = 0,
): ScoreAt => {
  const bases = targets.map((t) => baseOf(question, draws, t, shift));
  return (at) => {
    const ratios = targets.map((t) => sizeRatio(question, t, at));
    const known = ratios.filter((r): r is number => r !== null);
    if (targets.length === 0 || known.length < ratios.length) return null;
    return score(draws, bases, known, question.sizes[at] ?? '', at);
  };
};

const baseOf = (
  question: ForecastQuestion,
  draws: Draws,
  target: FitTarget,
  shift: number,
): Base => {
  const counted = target.measurement.wanted.worked === 'counted';
  const log = draws.afresh[target.at]!;
  const moved = counted ? shift : 0;
  const lengths = lengthsIn(draws, log, target.passage, question.judgeAt, moved);
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
  const judged = bases.map(({ target, lengths, median }, k) => ({
    landmark: target.wanted.landmark,
    verdict: verdicts(draws, target, lengths, ratios[k]),
    p50Mm: median * ratios[k]!,
    byMm: outside(target, median * ratios[k]!),
  }));
  const worst = judged.reduce<SizeScore['worst']>(
    (a, b) => (b.byMm !== 0 && Math.abs(b.byMm) > Math.abs(a?.byMm ?? 0) ? b : a),
    null,
  );
  const fit: SizeFit = {
    size,
    chanceAll: shareAll(judged.map((j) => j.verdict)) ?? 0,
    landmarks: judged.map(({ landmark, p50Mm, verdict }) => ({
      landmark,
      p50Mm,
      chance: share(verdict, 0),
    })),
  };
  return { fit, miss: judged.reduce((sum, j) => sum + Math.abs(j.byMm), 0), worst, at };
};

/** Signed distance of a length outside the wanted range; 0 inside. */
const outside = (target: FitTarget, length: number): number => {
  const { low, high } = bounds(target);
  return length < low ? length - low : length > high ? length - high : 0;
};

/**
 * The size with the best chance. Chances that differ by less than a draw or two in a hundred are
 * told apart by how far the medians miss, so that nine sizes that all fail are still put in order.
 */
export const bestSize = (scores: readonly SizeScore[]): SizeScore | null => {
  const top = Math.max(...scores.map((s) => s.fit.chanceAll));
  const near = scores.filter((s) => s.fit.chanceAll >= top - 0.02);
  return near.reduce<SizeScore | null>((a, b) => (a === null || b.miss < a.miss ? b : a), null);
};
