export * from './pace/index.ts';
export { routes } from './routes.ts';
export type * from './types.ts';
