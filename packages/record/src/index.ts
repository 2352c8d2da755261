export * from './schema/index.ts';
