import { namesSizes } from './labels.ts';
import { splitNameUnit } from './names.ts';
import { guessLandmark } from './synonyms.ts';
import { emptyCell, type TableCell } from './table-cells.ts';
import type { SizeTableOptions } from './types.ts';

type Grid = readonly (readonly TableCell[])[];

export const isUnitWord = (text: string): boolean =>
  /^(?:in|inch|inches|"|cm|mm|centimet(?:re|er)s)\.?$/i.test(text.trim());

/** Rows become columns. A short row leaves cells out at its end only. */
export function transpose(grid: Grid): TableCell[][] {
  const width = Math.max(0, ...grid.map((row) => row.length));
  return Array.from({ length: width }, (_, column) =>
    grid.flatMap((row) => row[column] ?? emptyAtEnd(row)),
  );
}

function emptyAtEnd(row: readonly TableCell[]): TableCell[] {
  const end = row.at(-1)?.from[1];
  return end === undefined ? [] : [emptyCell(end)];
}

const known = (cells: readonly TableCell[], { kind }: SizeTableOptions): number =>
  cells.filter(({ text }) => guessLandmark(splitNameUnit(text).name, kind) !== 'custom').length;

/** Are the measurements along the top and the sizes down the side? Told by where known names stand. */
export function sizesRunDown(grid: Grid, options: SizeTableOptions): boolean {
  const top = grid[0]?.slice(1) ?? [];
  const side = grid.slice(1).flatMap((row) => row.slice(0, 1));
  const [along, down] = [known(top, options), known(side, options)];
  if (along !== down) return along > down;
  return (
    namesSizes(grid[0]?.[0]?.text ?? '') &&
    top.every(({ text }) => /\p{L}{4}/u.test(text)) &&
    top.length > 0
  );
}

/** Is the first row made of labels? Not where it starts with a measurement of its own. */
export const hasHead = (grid: Grid, options: SizeTableOptions): boolean =>
  grid.length > 0 && known(grid[0]!.slice(0, 1), options) === 0;
