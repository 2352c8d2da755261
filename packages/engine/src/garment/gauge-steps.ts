import {
  type Direction,
  type FabricModel,
  FORECAST_STATES,
  type ForecastState,
  fabricModel,
  fabricPosterior,
  pitchIn,
  type RestState,
} from '../fabric/index.ts';
import { type Affine, meanOf, type Posterior, sdOf, Z95 } from '../stats/index.ts';
import type { ForecastQuestion, GaugeForecast, GaugeStep, Range } from './forecast-types.ts';

/**
 * The gauge before any reading and after each one, in the order of the question: shows what every
 * entry is worth. Ranges are closed form (log-normal), so this is cheap enough for every keystroke.
 * Worn has the pitch of dried here: how far a garment hangs is no matter of the gauge.
 */
export const gaugeSteps = (question: ForecastQuestion): GaugeStep[] => {
  const model = fabricModel(question);
  const fixed = model.evidence.filter((e) => e.basis.kind !== 'measured');
  const read = model.evidence.filter((e) => e.basis.kind === 'measured');
  return [null, ...read].map((last, k) => ({
    basisId: last?.basis.id ?? null,
    label: last?.basis.text ?? 'Before any measurement',
    ...gaugeOf(model, fabricPosterior(model, [...fixed, ...read.slice(0, k)])),
  }));
};

/** Pitches of the fabric in each state, in millimetres. */
export const gaugeOf = (model: FabricModel, post: Posterior): GaugeForecast => ({
  stitch: perState((state) => pitchRange(model, post, 'width', state)),
  row: perState((state) => pitchRange(model, post, 'length', state)),
});

const perState = (of: (state: ForecastState) => Range): Record<ForecastState, Range> =>
  Object.fromEntries(FORECAST_STATES.map((s) => [s, of(s)])) as Record<ForecastState, Range>;

const REST: Readonly<Record<ForecastState, RestState>> = {
  asKnit: 'asKnit',
  wet: 'wet',
  dried: 'dried',
  worn: 'dried',
  rewashed: 'rewashed',
};

const pitchRange = (
  model: FabricModel,
  post: Posterior,
  direction: Direction,
  state: ForecastState,
): Range => logNormalRange(post, pitchIn(model, direction, REST[state]));

/** 5, 50 and 95 % of a length whose logarithm is this form. */
export const logNormalRange = (post: Posterior, form: Affine): Range => {
  const mean = meanOf(post, form);
  const half = Z95 * sdOf(post, form);
  return { p05Mm: Math.exp(mean - half), p50Mm: Math.exp(mean), p95Mm: Math.exp(mean + half) };
};
