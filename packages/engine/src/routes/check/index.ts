export { garment } from './garments.ts';
export { promisesBroken } from './promises.ts';
export { contradictedSizes, type SaidOfSizes } from './size-statements.ts';
