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

/**
 * Every size of the pattern begun afresh at this gauge, on the same draws. `shift` moves the log
 * pitch: a what-if of another needle. Sizes that lack a wanted measurement are left out.
 */
export const scoreSizes = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
  shift = 0,
): SizeScore[] => {
  const bases = targets.map((t) => finished(question, draws, t, shift));
  return question.sizes.flatMap((size, at) => {
    const ratios = targets.map((t) => sizeRatio(question, t, at));
    if (targets.length === 0 || ratios.some((r) => r === null)) return [];
    const lengths = bases.map((base, k) => base.map((v) => v * ratios[k]!));
    return [score(draws, targets, lengths, size, at)];
  });
};

const finished = (
  question: ForecastQuestion,
  draws: Draws,
  target: FitTarget,
  shift: number,
): Float64Array => {
  const counted = target.measurement.wanted.worked === 'counted';
  const log = draws.afresh[target.at]!;
  return lengthsIn(draws, log, target.passage, question.judgeAt, counted ? shift : 0);
};

/** How much larger another size is made than the chosen one: by its counts, else by its lengths. */
const sizeRatio = (question: ForecastQuestion, target: FitTarget, at: number): number | null => {
  const { wanted } = target.measurement;
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
  targets: readonly FitTarget[],
  lengths: readonly Float64Array[],
  size: string,
  at: number,
): SizeScore => {
  const all = targets.map((t, k) => verdicts(draws, t, lengths[k]!));
  const medians = lengths.map((values) => quantilesInPlace(values, [0.5])[0]!);
  const misses = targets.map((t, k) => ({
    landmark: t.wanted.landmark,
    byMm: outside(t, medians[k]!),
  }));
  const worst = misses.reduce<SizeScore['worst']>(
    (a, b) => (b.byMm !== 0 && Math.abs(b.byMm) > Math.abs(a?.byMm ?? 0) ? b : a),
    null,
  );
  const fit: SizeFit = {
    size,
    chanceAll: shareAll(all) ?? 0,
    landmarks: targets.map((t, k) => ({
      landmark: t.wanted.landmark,
      p50Mm: medians[k]!,
      chance: share(all[k]!, 0),
    })),
  };
  return { fit, miss: misses.reduce((sum, m) => sum + Math.abs(m.byMm), 0), worst, at };
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
