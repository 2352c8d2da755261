export * from './pace/index.ts';
