export * from './mesh/index.ts';
export * from './sparse/index.ts';
