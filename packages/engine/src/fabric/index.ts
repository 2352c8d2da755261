export * from './basis.ts';
export * from './specimen.ts';
export * from './states.ts';
