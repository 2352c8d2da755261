export { type Holder, holder } from './holder.ts';
export { type MatWorker, makeMatWorker } from './mat-worker.ts';
export { inPiece, onMat as placeOnMat } from './on-mat.ts';
export { type Planner, planner } from './planner.ts';
export type * from './protocol.ts';
