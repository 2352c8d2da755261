export type * from './mat-types.ts';
export { measured, type Ruler, rulersOf } from './measure.ts';
export { openSheet, type PieceSheet, placeIn } from './piece-sheet.ts';
export { planBlock } from './plan.ts';
export { DEFAULT_NODES } from './plan-piece.ts';
export type * from './types.ts';
export { wantedOf } from './wanted-outline.ts';
