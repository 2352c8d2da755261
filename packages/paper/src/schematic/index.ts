export type { PlacedDimension } from './cell.ts';
export {
  type DimensionNumbers,
  dimensionSentence,
  fullName,
  pieceCaption,
  shortName,
  type Words,
} from './dimension-words.ts';
export { type Drawing, drawingOf, type ForecastSizes } from './drawn-piece.ts';
export type { LabelSize } from './label-size.ts';
export { NARROW, type PlacedCell, type Plan, type PlanOptions, planOf } from './plan.ts';
export { forecastSizes, wantedSizes } from './sizes.ts';
