export { areaOf, layersOf, pieceStitches } from './piece-stitches.ts';
export type * from './types.ts';
