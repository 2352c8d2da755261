import { viewOf } from './grading.ts';
import type { Misprint, PrintedVersion, SizeCell, SizeRow } from './types.ts';

const GRIDS = { in: [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16], cm: [1, 1 / 2], mm: [1] } as const;
const PER_UNIT = { in: 25.4, cm: 10, mm: 1 } as const;
const FINEST = { in: 2.54, cm: 1, mm: 1 } as const;
/** Doubles of one length by two ways differ in the last digit; a micrometre is far below any print. */
const HAIR = 0.001;

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;

/**
 * The coarsest step that all numbers of a version lie on: whole inches, halves, quarters; whole or
 * half centimetres; else tenths. In millimetres. Numbers are rounded to it when they are printed.
 */
export function printedGrid({ unit, cells }: PrintedVersion): number {
  const values = cells.flatMap(({ mm }) => (mm === null ? [] : [mm / PER_UNIT[unit]]));
  const grid = GRIDS[unit].find((step) => values.every((value) => isWhole(value / step)));
  return grid === undefined ? FINEST[unit] : grid * PER_UNIT[unit];
}

const valuesOf = ({ cells }: PrintedVersion): (number | null)[] => cells.map(({ mm }) => mm);

function suspectOf(
  inches: readonly (number | null)[],
  cm: readonly (number | null)[],
  index: number,
  trusted: (i: number) => boolean,
  tolerance: number,
): 'in' | 'cm' | null {
  const a = viewOf(inches, index, trusted);
  const b = viewOf(cm, index, trusted);
  if (!a || !b) return null;
  if (a.fits !== b.fits) return a.fits ? 'cm' : 'in';
  // Both or neither fit: one must be three times as far off, and by more than rounding, to be named.
  const [near, far] = [Math.min(a.off, b.off), Math.max(a.off, b.off)];
  if (far <= tolerance || far < 3 * near) return null;
  return a.off > b.off ? 'in' : 'cm';
}

const named = (cell: SizeCell, unit: string): string => `${cell.text.trim()} ${unit}`;

function sentenceFor(
  row: SizeRow,
  size: string,
  inches: SizeCell,
  cm: SizeCell,
  suspect: Misprint['suspect'],
): string {
  const both = `${row.name || 'This row'}, size ${size}: ${named(inches, 'in')} and ${named(cm, 'cm')} are not the same length.`;
  if (suspect === null) return `${both} The other sizes do not tell which one is wrong.`;
  const wrong = suspect === 'in' ? named(inches, 'in') : named(cm, 'cm');
  return `${both} The sizes beside it speak against ${wrong}.`;
}

/**
 * Compares inches with centimetres cell by cell. Both are roundings of one length, so they may
 * differ by half a step of each and no more. What differs more is a misprint; the neighbours,
 * graded from size to size, tell which number it is likely to be.
 */
export function crossCheck(row: SizeRow, index: number, sizes: readonly string[]): Misprint[] {
  const inches = row.printed.find(({ unit }) => unit === 'in');
  const cm = row.printed.find(({ unit }) => unit !== 'in');
  if (!inches || !cm || inches.cells.length !== cm.cells.length) return [];
  const toleranceMm = (printedGrid(inches) + printedGrid(cm)) / 2;
  const differences = inches.cells.map(({ mm }, i) => {
    const other = cm.cells[i]!.mm;
    return mm === null || other === null ? 0 : Math.abs(mm - other);
  });
  const [inInches, inCm] = [valuesOf(inches), valuesOf(cm)];
  const agrees = (i: number) => differences[i]! <= toleranceMm + HAIR;
  return differences.flatMap((differenceMm, size): Misprint[] => {
    if (agrees(size)) return [];
    const suspect = suspectOf(inInches, inCm, size, agrees, toleranceMm);
    const pair = { inches: inches.cells[size]!, centimetres: cm.cells[size]! };
    const label = sizes[size] ?? `${size + 1}`;
    const sentence = sentenceFor(row, label, pair.inches, pair.centimetres, suspect);
    return [{ row: index, size, ...pair, differenceMm, toleranceMm, suspect, sentence }];
  });
}
