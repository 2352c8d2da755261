import { commaMeaning } from './comma.ts';
import type { Delimiter } from './delimiter.ts';
import { type DraftRow, type DraftRun, placed } from './draft.ts';
import { implyUnits } from './imply-units.ts';
import { isLetterSize, type Label } from './labels.ts';
import { splitNameUnit } from './names.ts';
import { hasHead, isUnitWord, sizesRunDown, transpose } from './orientation.ts';
import { pieceMarks } from './read-line.ts';
import type { Drafts } from './read-lines.ts';
import { type Reading, tableFault } from './reading.ts';
import { markOf, spanOf } from './source.ts';
import { splitNumbers } from './split-numbers.ts';
import { emptyCell, type TableCell, tableCells } from './table-cells.ts';
import type { PrintedUnit, SizeTableOptions, TextMark, TextSpan } from './types.ts';
import { unitNamed, valuePieces } from './value-pieces.ts';
import { valueRuns } from './value-runs.ts';

const unitOfWord = (text: string | undefined): PrintedUnit | null =>
  text !== undefined && isUnitWord(text) ? unitNamed(text.trim()) : null;

/** Marks a whole cell without the blanks around it. */
function markCell(cell: TableCell, as: TextMark['as'], reading: Reading): void {
  const { plain } = cell.source;
  const start = plain.length - plain.trimStart().length;
  const end = plain.trimEnd().length;
  if (end > start) reading.mark(markOf(cell.source, start, end, as));
}

/** A column whose every filled cell, below the head, is a unit. */
function hasUnitColumn(rows: readonly (readonly TableCell[])[]): boolean {
  const filled = rows.map((row) => row[1]?.text ?? '').filter((text) => text !== '');
  return filled.length > 0 && filled.every(isUnitWord);
}

const emptyRun = (cell: TableCell): DraftRun => ({
  unit: null,
  values: [{ low: null, high: null, start: 0, end: 0, source: { plain: '', at: [cell.from[0]] } }],
});

/** The numbers of one cell, under their units. */
function cellRuns(cell: TableCell, reading: Reading): DraftRun[] {
  const raw = valuePieces(cell.source);
  const pieces = splitNumbers(raw, commaMeaning(raw, 1));
  reading.mark(...pieceMarks(pieces, cell.source));
  return placed(valueRuns(pieces), cell.source);
}

function refuseCell(cell: TableCell, field: string, reading: Reading): void {
  const from = spanOf(cell.source, 0, cell.source.plain.length);
  reading.refuse(
    from,
    tableFault(
      'cell-unreadable',
      field,
      reading.text.slice(...from),
      'this cell does not hold one number',
      'Keep one number in it, or one for each unit.',
    ),
  );
}

const isSingle = (runs: readonly DraftRun[]): boolean =>
  runs.length > 0 && runs.every(({ values }) => values.length === 1);

/** `34 (86)` in a cell: two bare numbers, the same length twice. */
function unpaired(runs: readonly DraftRun[]): DraftRun[] {
  const [only] = runs;
  if (runs.length !== 1 || only?.unit !== null || only.values.length !== 2) return [...runs];
  const apart = only.values.map((value) => ({ unit: null, values: [value] }));
  const named = implyUnits(apart) as DraftRun[];
  return named.every(({ unit }) => unit !== null) ? named : [...runs];
}

/** One entry per unit for a cell; a cell that is empty or unreadable has an empty value. */
function oneEach(cell: TableCell, field: string, reading: Reading): DraftRun[] {
  if (cell.text === '') return [emptyRun(cell)];
  const runs = unpaired(cellRuns(cell, reading));
  if (isSingle(runs)) return runs;
  refuseCell(cell, field, reading);
  return [emptyRun(cell)];
}

/** Puts the cells of a row under the units that occur in it; a cell without one of them is empty there. */
function rowRuns(cells: readonly TableCell[], field: string, reading: Reading): DraftRun[] {
  const byCell = cells.map((cell) => oneEach(cell, field, reading));
  const named = byCell.flat().map(({ unit }) => unit);
  const units = [...new Set(named.filter((unit) => unit !== null))];
  return (units.length > 0 ? units : [null]).map((unit) => ({
    unit,
    values: byCell.map((runs, i) => {
      const run =
        runs.find((each) => each.unit === unit) ?? runs.find((each) => each.unit === null);
      return (run ?? emptyRun(cells[i]!)).values[0]!;
    }),
  }));
}

function readRow(row: readonly TableCell[], first: number, reading: Reading): DraftRow | null {
  const [head] = row;
  if (!head || row.every(({ text }) => text === '')) return null;
  markCell(head, 'name', reading);
  if (first === 2 && row[1]) markCell(row[1], 'unit', reading);
  const { name, unit } = splitNameUnit(head.text.replace(/\s*:$/, ''));
  const hint = (first === 2 ? unitOfWord(row[1]?.text) : null) ?? unit;
  const runs = rowRuns(row.slice(first), name || 'size table', reading);
  return { name, from: head.from, spanWords: '', hint, runs, commasUnclear: false, faults: [] };
}

/** Labels in the head; empty cells at its end are spreadsheet padding. */
function readHead(row: readonly TableCell[], first: number, reading: Reading): Label[] {
  for (const cell of row.slice(0, first)) markCell(cell, 'name', reading);
  const cells = row.slice(first);
  while (cells.at(-1)?.text === '') cells.pop();
  for (const cell of cells) markCell(cell, 'size', reading);
  return cells.map(({ text, from }) => ({ text, from }));
}

/** A table whose head starts with a size has no column of names: it gets an empty one. */
function withNames(grid: readonly (readonly TableCell[])[]): (readonly TableCell[])[] {
  if (!isLetterSize(grid[0]?.[0]?.text ?? '')) return [...grid];
  return grid.map((row) => [emptyCell(row[0]?.from[0] ?? 0), ...row]);
}

/** Reads cells from a spreadsheet or a CSV file, sizes across or down. */
export function readTable(
  delimiter: Delimiter,
  lines: readonly TextSpan[],
  options: SizeTableOptions,
  reading: Reading,
): Drafts {
  const { grid: pasted, marks } = tableCells(reading.text, lines, delimiter);
  reading.mark(...marks);
  const grid = withNames(sizesRunDown(pasted, options) ? transpose(pasted) : pasted);
  const headed = hasHead(grid, options);
  const body = headed ? grid.slice(1) : grid;
  const first = hasUnitColumn(body) ? 2 : 1;
  const labels = headed ? readHead(grid[0]!, first, reading) : null;
  const corner = grid[0]?.[0]?.text;
  const unit = headed ? (unitOfWord(corner) ?? splitNameUnit(corner ?? '').unit) : null;
  const padded = labels ? first + labels.length : Number.POSITIVE_INFINITY;
  const rows = body.flatMap((row) => readRow(trimPadding(row, padded), first, reading) ?? []);
  return { labels: labels && labels.length > 0 ? labels : null, rows, unit };
}

/** Empty cells beyond the labels are padding; filled ones stay and are counted. */
function trimPadding(row: readonly TableCell[], width: number): TableCell[] {
  const cells = [...row];
  while (cells.length > width && cells.at(-1)?.text === '') cells.pop();
  return cells;
}
