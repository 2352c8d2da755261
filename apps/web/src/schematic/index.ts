export { RangeBar, type RangeBarProps, rangeSentence } from './RangeBar.tsx';
export { Schematic, type SchematicProps } from './Schematic.tsx';
