export * from './pace/index.ts';
export { pacePlan } from './plan.ts';
export { routes } from './routes.ts';
export { sizeByNeedle } from './size-by-needle.ts';
export { type SkeinPlan, skeinPlan } from './skein-plan.ts';
export type * from './types.ts';
