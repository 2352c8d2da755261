import { buildRow } from './build-row.ts';
import { checkCounts, commonCount } from './count-sizes.ts';
import { crossCheck } from './cross-check.ts';
import { findDelimiter } from './delimiter.ts';
import { joinVersions } from './draft.ts';
import { takeGauges } from './gauges.ts';
import { labelFaults } from './label-faults.ts';
import { readLines } from './read-lines.ts';
import { readTable } from './read-table.ts';
import { Reading } from './reading.ts';
import { linesOf } from './source.ts';
import type { SizeTable, SizeTableOptions } from './types.ts';

/**
 * Reads the measurements of a pattern as printed or as copied from a spreadsheet.
 *
 * Takes one line (`Finished chest: 34 (38, 42)" / 86 (96, 106) cm`), a block of such lines with or
 * without a line of sizes, a whole pattern with all that is said between them, or a table parted by
 * tabs, semicolons or commas with sizes across or down. Gauges are taken out first. Never throws and never loses text: what is not understood is in `unread` with its place and
 * a fault. Nothing is corrected: inches that do not match their centimetres are listed as misprints.
 */
export function readSizeTable(text: string, options: SizeTableOptions = {}): SizeTable {
  const reading = new Reading(text);
  const { gauges, lines } = takeGauges(linesOf(text), options, reading);
  const delimiter = findDelimiter(text, lines);
  const drafts = delimiter
    ? readTable(delimiter, lines, options, reading)
    : readLines(lines, options, reading);
  const unit = drafts.unit ?? options.unit ?? null;
  const built = joinVersions(drafts.rows).map((draft) => buildRow(draft, unit, options, reading));
  const count = drafts.labels?.length ?? commonCount(built);
  const sizes = drafts.labels?.map((label) => label.text) ?? numbered(count);
  const rows = built.map((row) => checkCounts(row, sizes.length));
  return {
    sizes,
    sizesFrom: drafts.labels ? 'text' : 'counted',
    faults: labelFaults(sizes),
    rows,
    gauges,
    misprints: rows.flatMap((row, index) => crossCheck(row, index, sizes)),
    ...reading.finish(),
  };
}

const numbered = (count: number): string[] => Array.from({ length: count }, (_, i) => `${i + 1}`);
