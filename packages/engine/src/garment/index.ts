export * from './body-tables/index.ts';
export * from './dimensional-change.ts';
export { DEFAULT_DRAWS, DEFAULT_SEED, forecast } from './forecast.ts';
export * from './forecast-types.ts';
export { gaugeSteps } from './gauge-steps.ts';
export * from './kinds.ts';
export * from './landmarks.ts';
export * from './outline/index.ts';
export * from './paste/index.ts';
