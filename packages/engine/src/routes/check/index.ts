export { garment } from './garments.ts';
export { promisesBroken } from './promises.ts';
export { contradictedSizes, type SaidOfSizes } from './size-statements.ts';
export { stock } from './stocks.ts';
export { contradictedYarn, type SaidOfYarn } from './yarn-statements.ts';
