export { type SkeinOptions, skeinAdvice } from './advice.ts';
export { MOST_SHORT, PUBLISHED_LOOPS_MM } from './assumptions.ts';
export { yarnDraws } from './draws.ts';
export { heldDraws, yarnHeld } from './held.ts';
export { yarnNeeded } from './needed.ts';
export { yarnPerStitch } from './per-stitch.ts';
export { loopEstimates } from './priors.ts';
export { chanceShort } from './short.ts';
export type * from './types.ts';
