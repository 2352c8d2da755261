export * from './body-tables/index.ts';
export * from './dimensional-change.ts';
export { type Draws, drawAll } from './draws.ts';
export { type EachSize, forecastEach, keyMeasurements } from './each-size.ts';
export {
  bounds,
  type FitTarget,
  fitTargets,
  missOf,
  rangeOf,
  share,
  shareAll,
  verdicts,
} from './fit.ts';
export { DEFAULT_DRAWS, DEFAULT_SEED, forecast } from './forecast.ts';
export * from './forecast-types.ts';
export { gaugeSteps } from './gauge-steps.ts';
export { atLatest } from './judged-at.ts';
export * from './kinds.ts';
export { type Known, learn } from './known.ts';
export * from './landmarks.ts';
export { nextNeedle, type OnNeedle, onNeedle } from './other-needle.ts';
export * from './outline/index.ts';
export { passagesOf, type SizeOf, wetStretch } from './passages.ts';
export * from './paste/index.ts';
export { type InSize, inSizes } from './size-choice.ts';
export { logIn } from './size-model.ts';
export { sizeWords } from './size-words.ts';
export { lengthsIn, type Passage, scaledBy } from './state-lengths.ts';
