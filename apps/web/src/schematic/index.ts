export type { ForecastSizes } from './drawn-piece.ts';
export { RangeBar, type RangeBarProps, rangeSentence } from './RangeBar.tsx';
export { Schematic, type SchematicProps } from './Schematic.tsx';
