export * from './cholesky.ts';
export * from './linear-gaussian.ts';
export * from './log-normal.ts';
export * from './normal-columns.ts';
export * from './normal-source.ts';
export * from './quantile.ts';
export * from './unit-interval.ts';
export * from './whole-percent.ts';
