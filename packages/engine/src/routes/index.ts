export * from './pace/index.ts';
export type * from './types.ts';
