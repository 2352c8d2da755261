export { measured, type Ruler, rulersOf } from './measure.ts';
export { openSheet, type PieceSheet, placeIn } from './piece-sheet.ts';
export { DEFAULT_NODES, planBlock } from './plan.ts';
export type * from './types.ts';
export { wantedOf } from './wanted-outline.ts';
