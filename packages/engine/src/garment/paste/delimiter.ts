import { linesOf } from './source.ts';

export type Delimiter = '\t' | ';' | ',';

/** A line without its quoted parts, which may hold delimiters of their own. */
const unquoted = (line: string): string =>
  line.replace(/(^|[\t;,])"(?:[^"]|"")*"(?=$|[\t;,])/g, '$1');

const NAME_WITH_VALUE = /\p{L}[\p{L}\s().-]*(?::|\s)\s*[[(]?\d/u;
const LIST_IN_BRACKETS = /[([{][^)\]}]*\d[^)\]}]*[,;:/][^)\]}]*\d[^)\]}]*[)\]}]/;

/** Is each line a row of cells rather than a sentence with commas in it? */
function isRows(lines: readonly string[], delimiter: Delimiter): boolean {
  const rows = lines.filter((line) => line.includes(delimiter));
  if (rows.length < 2 || rows.length * 2 < lines.length) return false;
  return rows.every((row) => {
    const [first = ''] = row.split(delimiter);
    return !NAME_WITH_VALUE.test(first) && !LIST_IN_BRACKETS.test(row);
  });
}

/** Cells from a spreadsheet come with tabs; a single tab before a bracketed list is only spacing. */
function isTabbed(lines: readonly string[]): boolean {
  const rows = lines.filter((line) => /\S\s*\t|^\t.*\S/.test(line));
  if (rows.length === 0 || rows.length * 2 < lines.length) return false;
  return rows.some((row) => row.trimEnd().split('\t').length > 2 || !LIST_IN_BRACKETS.test(row));
}

/** What parts the cells of a table; null where the text is lines as a pattern prints them. */
export function findDelimiter(text: string): Delimiter | null {
  const lines = linesOf(text).map(([start, end]) => unquoted(text.slice(start, end)));
  if (isTabbed(lines)) return '\t';
  if (isRows(lines, ';')) return ';';
  return isRows(lines, ',') ? ',' : null;
}
