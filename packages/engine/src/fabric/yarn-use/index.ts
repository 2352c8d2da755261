export { type SkeinOptions, skeinAdvice } from './advice.ts';
export { MOST_SHORT } from './assumptions.ts';
export { type YarnDrawer, yarnDrawer, yarnDraws } from './draws.ts';
export { heldDraws, yarnHeld } from './held.ts';
export { yarnNeeded } from './needed.ts';
export { yarnPerStitch } from './per-stitch.ts';
export { chanceShort } from './short.ts';
export type * from './types.ts';
export { weighedFrom } from './weighed-from.ts';
