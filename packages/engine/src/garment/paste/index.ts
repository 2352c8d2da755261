export { readSizeTable } from './read-size-table.ts';
export type {
  Misprint,
  PrintedGauge,
  PrintedUnit,
  PrintedVersion,
  SizeCell,
  SizeRow,
  SizeTable,
  SizeTableOptions,
  TextMark,
  TextSpan,
  UnreadText,
} from './types.ts';
export { writeSizeTable } from './write-size-table.ts';
