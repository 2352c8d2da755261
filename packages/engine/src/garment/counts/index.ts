export {
  type ButtonholeQuestion,
  type Buttonholes,
  buttonholes,
  buttonNotice,
} from './buttonholes.ts';
export { type CountAnswer, type Counted, type CountQuestion, countFor } from './count-for.ts';
export { outlineFromCounts } from './draw-steps.ts';
export { type Spacing, type SpacingQuestion, spaceEvenly } from './even-gaps.ts';
export { type PickUp, type PickUpQuestion, pickUp, type Ratio } from './pick-up.ts';
export {
  countsFromOutline,
  countsOfPiece,
  type Measure,
  type PieceCounts,
  type PieceQuestion,
} from './piece-counts.ts';
export { areaOf, layersOf, pieceStitches } from './piece-stitches.ts';
export { type ReadOptions, readCounts } from './read-counts.ts';
export { type Recount, type RecountedLine, recount } from './recount.ts';
export { shareKnit } from './share-knit.ts';
export { type ShortRowQuestion, type ShortRows, shortRows } from './short-rows.ts';
export { type SockCounts, sockCounts } from './sock-counts.ts';
export { type RowSpacing, type RowSpacingQuestion, spaceRows } from './space-rows.ts';
export { stitchesIn, tidySteps } from './tidy.ts';
export type * from './types.ts';
export type { Words } from './words.ts';
export { type WriteOptions, writeCounts } from './write-counts.ts';
export {
  writeBand,
  writeHeel,
  writePickUp,
  writeRowSpacing,
  writeShortRows,
  writeSpacing,
} from './write-plans.ts';
