export * from './forecast-types.ts';
export * from './kinds.ts';
export * from './landmarks.ts';
