export { DEFAULT_DRAWS, DEFAULT_SEED, forecast } from './forecast.ts';
export * from './forecast-types.ts';
export { gaugeSteps } from './gauge-steps.ts';
export * from './kinds.ts';
export * from './landmarks.ts';
