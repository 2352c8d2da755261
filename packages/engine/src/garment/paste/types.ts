import type { Direction } from '../../fabric/index.ts';
import type { CountOver, Fault, Millimetres } from '../../units/index.ts';
import type { GarmentKind } from '../kinds.ts';

/** Start and end (exclusive) of a piece of the pasted text, in UTF-16 code units. */
export type TextSpan = readonly [start: number, end: number];
export type PrintedUnit = 'in' | 'cm' | 'mm';

/** One number of the table. */
export interface SizeCell {
  /** Null where the size has none (a dash, an empty cell), where it is a range, or could not be read. */
  readonly mm: Millimetres | null;
  /** Ends of a range such as `30-32`; null for a single number. */
  readonly range: readonly [Millimetres, Millimetres] | null;
  readonly text: string;
  readonly from: TextSpan;
}

/** The same measurement in one of the units that it is printed in. */
export interface PrintedVersion {
  readonly unit: PrintedUnit;
  readonly cells: readonly SizeCell[];
}

/** One measurement over all sizes. */
export interface SizeRow {
  readonly name: string;
  readonly from: TextSpan;
  /** A guess from the name, `custom` where it says nothing known. */
  readonly landmark: string;
  /** From the landmark or from a word such as `depth`; null where neither says. */
  readonly direction: Direction | null;
  /** Only where the words say so; otherwise undefined, and the knitter has to be asked. */
  readonly span: 'flat' | 'around' | undefined;
  /** `body`: a line such as `To fit bust`, which is not a measurement of the garment. */
  readonly measures: 'garment' | 'body';
  /** In the unit asked for where it is printed, else in the first that is. */
  readonly cells: readonly SizeCell[];
  /** Every unit that the row is printed in, as printed; empty where the unit is not known. */
  readonly printed: readonly PrintedVersion[];
  /** What is wrong with the row, to be shown beside it. */
  readonly faults: readonly Fault[];
}

/** A piece of text that was not understood. */
export interface UnreadText {
  readonly from: TextSpan;
  readonly text: string;
  readonly fault: Fault;
}

/** Inches and centimetres of one cell that cannot both be right. Nothing is corrected. */
export interface Misprint {
  readonly row: number;
  readonly size: number;
  readonly inches: SizeCell;
  readonly centimetres: SizeCell;
  readonly differenceMm: number;
  /** Half a step of each unit as the row prints it: the most that rounding can explain. */
  readonly toleranceMm: number;
  /** Which one the neighbours speak against; null where they do not tell. */
  readonly suspect: 'in' | 'cm' | null;
  readonly sentence: string;
}

/** What a piece of the text was taken for: a view can show it in place. */
export interface TextMark {
  readonly from: TextSpan;
  readonly as: 'name' | 'size' | 'value' | 'unit' | 'join' | 'gauge';
}

/** A gauge as the text gives it; one of both may be missing. */
export interface PrintedGauge {
  readonly stitches: CountOver | null;
  readonly rows: CountOver | null;
  /** Blocked or not, where the words beside it say so; null otherwise. */
  readonly state: 'asKnit' | 'dried' | null;
  readonly from: TextSpan;
}

export interface SizeTable {
  readonly sizes: readonly string[];
  /** `counted`: the text names no sizes, so they are numbered. */
  readonly sizesFrom: 'text' | 'counted';
  /** What is wrong with the sizes: a label that comes twice, a column without one. */
  readonly faults: readonly Fault[];
  readonly rows: readonly SizeRow[];
  /** Every gauge of the text, in its order. */
  readonly gauges: readonly PrintedGauge[];
  readonly unread: readonly UnreadText[];
  readonly misprints: readonly Misprint[];
  /** In the order of the text, without overlap; together with `unread` they cover all that is not blank. */
  readonly marks: readonly TextMark[];
}

export interface SizeTableOptions {
  /** Unit of numbers that name none, and the version preferred where two are printed. */
  readonly unit?: 'cm' | 'in' | undefined;
  /** Helps to guess landmarks: `length` of a blanket is not that of a pullover. */
  readonly kind?: GarmentKind | undefined;
}
