export { anyMutated, anyPlanted } from './any-picture.ts';
export { PLAIN, type Plain, TYPE_OF } from './pictures.ts';
export { lettersOf, PLANTED, PLANTS, plantedAll } from './planted.ts';
