import type { Draws } from './draws.ts';
import type { FitTarget } from './fit.ts';
import type { Advice, ForecastQuestion, NeedleAdvice } from './forecast-types.ts';
import { bestSize, type SizeScore, sizeScorer } from './size-choice.ts';

/**
 * One needle size changes the pitch by about this (log): half a stitch to one stitch in 20 over
 * 10 cm. Common practice, no source.
 */
const NEEDLE_STEP = 0.035;
/** A change of needle is only worth naming when it adds this much chance. */
const WORTH = 0.05;

export interface SizeAdvice {
  readonly scores: readonly SizeScore[];
  readonly advice: Advice;
}

/** Which size fits best at this gauge, and which needle direction would help, with the reason. */
export const adviseSize = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
  hasEvidence: boolean,
): SizeAdvice => {
  const scoreAt = sizeScorer(question, draws, targets);
  const scores = question.sizes.flatMap((_, at) => scoreAt(at) ?? []);
  const best = bestSize(scores);
  if (best === null) return { scores, advice: nothingToJudge(question, targets) };
  const needle = hasEvidence ? needleFor(question, draws, targets, best) : NO_NEEDLE;
  const chosen = scores.find((s) => s.at === question.chosen) ?? null;
  return {
    scores,
    advice: {
      bestSize: best.fit.size,
      needle: needle.direction,
      sentence: `${because(question, best, chosen)}${needle.clause}.`,
    },
  };
};

const nothingToJudge = (question: ForecastQuestion, targets: readonly FitTarget[]): Advice => ({
  bestSize: null,
  needle: 'no-evidence',
  sentence:
    targets.length === 0
      ? 'Say which ease or finished measurement is wanted, and for ease the body measurement, and each size can be judged.'
      : `None of the sizes ${question.sizes.join(', ')} has all the measurements that are wanted: fill in the missing cells of the size table.`,
});

const because = (question: ForecastQuestion, best: SizeScore, chosen: SizeScore | null): string => {
  const start = question.measured.length > 0 ? 'Begun afresh, size' : 'Size';
  const fits = `${start} ${best.fit.size} fits best at this gauge (${chance(best.fit.chanceAll)} that all wanted measurements come out in range)`;
  if (chosen !== null && chosen.at !== best.at)
    return `${fits}, because the ${missed(chosen)} of size ${question.sizes[chosen.at]} would come out ${direction(chosen)}`;
  return missOf(best) === null
    ? fits
    : `${fits}, though its ${missed(best)} is likely to come out ${direction(best)}`;
};

const missed = (score: SizeScore): string => spoken(score.worst?.landmark ?? closest(score));

/** Landmark ids are words joined by hyphens. */
const spoken = (landmark: string): string => landmark.replaceAll('-', ' ');

const closest = (score: SizeScore): string =>
  score.fit.landmarks.reduce((a, b) => (b.chance < a.chance ? b : a)).landmark;

/** A miss under half of ⅛ in, the mark of a tape, would be printed as none: it is not named. */
const LEAST_MISS_MM = 25.4 / 16;

const missOf = ({ worst }: SizeScore): SizeScore['worst'] =>
  worst !== null && Math.abs(worst.byMm) >= LEAST_MISS_MM ? worst : null;

const direction = (score: SizeScore): string => {
  const miss = missOf(score);
  if (miss === null) return 'less surely in range';
  const { byMm } = miss;
  return `about {mm:${Math.abs(byMm).toFixed(1)}} too ${byMm < 0 ? 'small' : 'large'}`;
};

const chance = (p: number): string =>
  p < 0.01 ? 'under 1 %' : p > 0.99 ? 'over 99 %' : `${Math.round(100 * p)} %`;

interface NeedleVerdict {
  readonly direction: NeedleAdvice;
  readonly clause: string;
}

const NO_NEEDLE: NeedleVerdict = {
  direction: 'no-evidence',
  clause: '; nothing has been measured yet, so swatch before changing needle',
};

const needleFor = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
  best: SizeScore,
): NeedleVerdict => {
  const at = (shift: number): SizeScore | null =>
    sizeScorer(question, draws, targets, shift)(best.at);
  const larger = at(NEEDLE_STEP);
  const smaller = at(-NEEDLE_STEP);
  const gain = (s: SizeScore | null): number => (s ? better(s, best) : Number.NEGATIVE_INFINITY);
  const up = gain(larger);
  const down = gain(smaller);
  if (Math.max(up, down) <= 0) return { direction: 'keep', clause: '; keep the needle' };
  const [pick, word] = up >= down ? ([larger, 'larger'] as const) : ([smaller, 'smaller'] as const);
  return {
    direction: word,
    clause: `; one needle size ${word} would make that ${chance(pick!.fit.chanceAll)}`,
  };
};

/** Positive where a change is worth naming: chance first, then the miss of the medians. */
const better = (changed: SizeScore, now: SizeScore): number => {
  const gain = changed.fit.chanceAll - now.fit.chanceAll;
  if (gain > WORTH) return gain;
  const hopeless = now.fit.chanceAll < 0.01 && changed.fit.chanceAll < 0.01;
  return hopeless && changed.miss < 0.8 * now.miss ? WORTH * (1 - changed.miss / now.miss) : 0;
};
