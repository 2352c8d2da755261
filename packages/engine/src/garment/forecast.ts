import type { ForecastState } from '../fabric/index.ts';
import { adviseSize } from './advice.ts';
import { type Draws, drawAll } from './draws.ts';
import { fitOf, fitTargets, rangeOf } from './fit.ts';
import type {
  Forecast,
  ForecastOptions,
  ForecastQuestion,
  MeasurementForecast,
  Range,
} from './forecast-types.ts';
import { gaugeOf, logNormalRange } from './gauge-steps.ts';
import { atLatest } from './judged-at.ts';
import { type Known, learn } from './known.ts';
import { noticesOf } from './notices.ts';
import { logIn, type SizedMeasurement } from './size-model.ts';
import { standsOn } from './stands-on.ts';
import { lengthsIn } from './state-lengths.ts';

export const DEFAULT_SEED = 1;
export const DEFAULT_DRAWS = 10_000;

/**
 * What one garment will measure in each state, how sure that is, and how it will fit: judged in the latest state
 * that was measured, where that is later than the plan's.
 *
 * Lengths are millimetres in each measurement's own span. Ranges are 5 to 95 %. Pure: the same
 * question, seed and number of draws give the same bytes. `draws` must be a whole number of at
 * least 100, or it throws a RangeError.
 */
export const forecast = (given: ForecastQuestion, options: ForecastOptions = {}): Forecast => {
  const { seed = DEFAULT_SEED, draws: n = DEFAULT_DRAWS } = options;
  if (!Number.isInteger(n) || n < 100) throw new RangeError(`draws: ${n}, wanted 100 or more`);
  const question = atLatest(given);
  const known = learn(question);
  const draws = drawAll(known.model, known.post, known.kept, { n, seed });
  const targets = fitTargets(question, known.model.measurements, known.passages);
  const fit = fitOf(question, draws, targets);
  const { scores, advice } = adviseSize({ question, known, draws, targets, fit, seed });
  const measurements = known.model.measurements.map((m, k) =>
    measurementForecast(known, draws, m, k),
  );
  return {
    seed,
    draws: n,
    chosenSize: question.sizes[question.chosen] ?? null,
    gauge: gaugeOf(known.model.fabric, known.post),
    measurements,
    judgedAt: question.judgeAt,
    fit: fit.landmarks,
    chanceAllFit: fit.chanceAll,
    sizes: scores.map((s) => s.fit),
    advice,
    notices: noticesOf(question, known, measurements),
    evidence: known.bases,
  };
};

const measurementForecast = (
  known: Known,
  draws: Draws,
  m: SizedMeasurement,
  k: number,
): MeasurementForecast => {
  const passage = known.passages[k]!;
  const dried = logIn(known.model.fabric, m.asKnit, m, 'dried');
  return {
    id: m.wanted.id,
    name: m.wanted.name,
    landmark: m.wanted.landmark,
    direction: m.wanted.direction,
    span: m.wanted.span,
    targetMm: m.targetMm,
    states: statesOf(known, draws, m, k),
    pinnedMm: passage.pinnedTo,
    standsOn: [
      ...standsOn(dried, known.evidence),
      ...(m.wanted.worked === 'counted'
        ? known.model.fabric.priors.slice(0, 1).map((b) => b.id)
        : []),
      ...(passage.pinnedTo === null ? [] : ['kept-share']),
      ...(passage.hang === 0 ? [] : ['hang']),
      `growth-${m.wanted.direction}`,
    ],
  };
};

/** Lengths at rest are log-normal and closed; what pins and hanging change is drawn. */
const statesOf = (
  known: Known,
  draws: Draws,
  m: SizedMeasurement,
  k: number,
): Record<ForecastState, Range> => {
  const passage = known.passages[k]!;
  const closed = (state: 'asKnit' | 'wet' | 'dried' | 'rewashed'): Range =>
    logNormalRange(known.post, logIn(known.model.fabric, m.asKnit, m, state));
  const drawn = (state: ForecastState): Range =>
    rangeOf(lengthsIn(draws, draws.asKnit[k]!, passage, state));
  const dried = passage.pinnedTo === null ? closed('dried') : drawn('dried');
  return {
    asKnit: closed('asKnit'),
    wet: closed('wet'),
    dried,
    worn: passage.hang === 0 ? dried : drawn('worn'),
    rewashed: closed('rewashed'),
  };
};
