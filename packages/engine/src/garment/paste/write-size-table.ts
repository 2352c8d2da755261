import { formatExact } from '../../units/index.ts';
import type { PrintedUnit, SizeCell, SizeRow, SizeTable } from './types.ts';

type Written = Pick<SizeTable, 'sizes'> & {
  readonly rows: readonly Pick<SizeRow, 'name' | 'printed' | 'cells'>[];
};

/** A cell of a spreadsheet: line breaks and tabs become spaces, quotes around what starts with one. */
function cellText(text: string): string {
  const line = text.replace(/[\t\r\n]+/g, ' ').trim();
  return line.startsWith('"') ? `"${line.replaceAll('"', '""')}"` : line;
}

const writeLength = (mm: number, unit: PrintedUnit): string =>
  formatExact(mm, { unit, style: 'ascii', bare: true });

function writeCell({ mm, range }: SizeCell, unit: PrintedUnit): string {
  if (mm !== null) return writeLength(mm, unit);
  return range === null ? '-' : range.map((end) => writeLength(end, unit)).join(' - ');
}

const writeRow = (name: string, unit: PrintedUnit, cells: readonly SizeCell[]): string =>
  [cellText(`${name} (${unit})`), ...cells.map((cell) => writeCell(cell, unit))].join('\t');

/**
 * A table for a spreadsheet: tabs between cells, sizes across, one line for each unit that a row is
 * printed in. `readSizeTable` reads it back with the same sizes, names and lengths. A row without
 * a known unit is written in centimetres, which changes nothing because it has no lengths.
 */
export function writeSizeTable({ sizes, rows }: Written): string {
  const head = ['Size', ...sizes.map(cellText)].join('\t');
  const lines = rows.flatMap(({ name, printed, cells }) =>
    (printed.length > 0 ? printed : [{ unit: 'cm' as const, cells }]).map((version) =>
      writeRow(name, version.unit, version.cells),
    ),
  );
  return `${[head, ...lines].join('\n')}\n`;
}
