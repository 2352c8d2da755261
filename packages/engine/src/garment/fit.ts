import type { ForecastState } from '../fabric/index.ts';
import { quantilesInPlace } from '../stats/index.ts';
import { mm } from '../units/index.ts';
import type { Draws } from './draws.ts';
import type { FitWanted, ForecastQuestion, LandmarkFit, Miss, Range } from './forecast-types.ts';
import type { SizedMeasurement } from './size-model.ts';
import { lengthsIn, type Passage } from './state-lengths.ts';

/** One wanted landmark joined to the measurement that answers it. */
export interface FitTarget {
  readonly wanted: FitWanted;
  readonly at: number;
  readonly measurement: SizedMeasurement;
  readonly passage: Passage;
  /** SD of the body measurement, millimetres; 0 where the wanted range is of the garment itself. */
  readonly bodySd: number;
}

/** Body girths repeat to about 9 mm by an expert's tape (ISO 20685 limit, from memory). */
const BODY_SD = { measured: 9, table: 20 } as const;
const JUDGED = ['dried', 'worn', 'rewashed'] as const;

/** Every wanted landmark for which the garment has a measurement and, where ease is wanted, a body. */
export const fitTargets = (
  question: ForecastQuestion,
  measurements: readonly SizedMeasurement[],
  passages: readonly Passage[],
): FitTarget[] =>
  question.wanted.flatMap((wanted) => {
    const at = measurements.findIndex((m) => m.wanted.landmark === wanted.landmark);
    const measurement = measurements[at];
    const passage = passages[at];
    if (measurement === undefined || passage === undefined) return [];
    if (wanted.kind === 'ease' && wanted.body === null) return [];
    const bodySd = wanted.kind === 'ease' ? BODY_SD[wanted.bodyFrom ?? 'measured'] : 0;
    return [{ wanted, at, measurement, passage, bodySd }];
  });

/** Smallest finished length that fits, and how much room there is above it. */
export const bounds = (target: FitTarget): { low: number; high: number } => {
  const base = target.wanted.kind === 'ease' ? (target.wanted.body ?? mm(0)) : 0;
  return { low: base + target.wanted.min, high: base + target.wanted.max };
};

/** −1 too small, 0 in range, +1 too large, per draw of `factor` times the lengths. */
export const verdicts = (
  draws: Draws,
  target: FitTarget,
  lengths: Float64Array,
  factor = 1,
): Int8Array => {
  const { low, high } = bounds(target);
  const body = bodyNoise(draws, target);
  const out = new Int8Array(draws.n);
  for (let i = 0; i < draws.n; i++) {
    const fitted = factor * lengths[i]! - target.bodySd * body[i]!;
    out[i] = fitted < low ? -1 : fitted > high ? 1 : 0;
  }
  return out;
};

/** The likelier side; of sides that are as likely, the one that the median lies nearer to. */
export const missOf = (
  { low, high }: { readonly low: number; readonly high: number },
  { tooSmall, tooLarge }: { readonly tooSmall: number; readonly tooLarge: number },
  p50Mm: number,
): Miss => {
  const small = tooSmall === tooLarge ? p50Mm < (low + high) / 2 : tooSmall > tooLarge;
  return small
    ? { side: 'small', byMm: Math.max(0, low - p50Mm) }
    : { side: 'large', byMm: Math.max(0, p50Mm - high) };
};

export const share = (verdict: Int8Array, value: -1 | 0 | 1): number => {
  let hits = 0;
  for (const v of verdict) if (v === value) hits++;
  return hits / verdict.length;
};

/** Share of draws in which every landmark is in range; null where nothing is wanted. */
export const shareAll = (all: readonly Int8Array[]): number | null => {
  const first = all[0];
  if (first === undefined) return null;
  let hits = 0;
  for (let i = 0; i < first.length; i++) if (all.every((v) => v[i] === 0)) hits++;
  return hits / first.length;
};

export interface FitResult {
  readonly landmarks: readonly LandmarkFit[];
  readonly chanceAll: number | null;
}

/** Fit of the chosen size in the state that the plan judges at. */
export const fitOf = (
  question: ForecastQuestion,
  draws: Draws,
  targets: readonly FitTarget[],
): FitResult => {
  const judged = targets.map((t) => judge(draws, t, question.judgeAt));
  return {
    landmarks: judged.map((j) => j.fit),
    chanceAll: shareAll(judged.map((j) => j.verdict)),
  };
};

const judge = (draws: Draws, target: FitTarget, state: ForecastState) => {
  const knit = draws.asKnit[target.at]!;
  const lengths = lengthsIn(draws, knit, target.passage, state);
  const verdict = verdicts(draws, target, lengths);
  const chance = (s: (typeof JUDGED)[number]): number =>
    s === state
      ? share(verdict, 0)
      : share(verdicts(draws, target, lengthsIn(draws, knit, target.passage, s)), 0);
  const { wanted } = target;
  const eased = wanted.kind === 'ease' ? ease(draws, target, lengths) : null;
  const finishedMm = rangeOf(lengths.slice());
  const sides = { tooSmall: share(verdict, -1), tooLarge: share(verdict, 1) };
  const fit: LandmarkFit = {
    landmark: wanted.landmark,
    measurement: target.measurement.wanted.id,
    bodyMm: wanted.body,
    wantedMm: { min: wanted.min, max: wanted.max, kind: wanted.kind },
    easeMm: eased === null ? null : rangeOf(eased),
    finishedMm,
    chance: share(verdict, 0),
    chanceByState: { dried: chance('dried'), worn: chance('worn'), rewashed: chance('rewashed') },
    ...sides,
    miss: missOf(bounds(target), sides, finishedMm.p50Mm),
  };
  return { fit, verdict };
};

/** Normals for the doubt about the body, the same for every size and state. */
const bodyNoise = (draws: Draws, target: FitTarget): Float64Array =>
  draws.body(`body ${target.wanted.landmark}`);

const ease = (draws: Draws, target: FitTarget, lengths: Float64Array): Float64Array => {
  const body = bodyNoise(draws, target);
  const given = target.wanted.body ?? 0;
  return lengths.map((length, i) => length - given - target.bodySd * body[i]!);
};

/** 5th, 50th and 95th percentile. Reorders `values`. */
export const rangeOf = (values: Float64Array): Range => {
  const [p05Mm, p50Mm, p95Mm] = quantilesInPlace(values, [0.05, 0.5, 0.95]);
  return { p05Mm: p05Mm!, p50Mm: p50Mm!, p95Mm: p95Mm! };
};
