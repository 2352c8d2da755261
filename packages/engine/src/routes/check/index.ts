export { garment } from './garments.ts';
export { promisesBroken } from './promises.ts';
