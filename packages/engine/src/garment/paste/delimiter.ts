import { linesOf } from './source.ts';
import type { TextSpan } from './types.ts';

export type Delimiter = '\t' | ';' | ',';

/** A line without its quoted parts, which may hold delimiters of their own. */
const unquoted = (line: string): string =>
  line.replace(/(^|[\t;,])"(?:[^"]|"")*"(?=$|[\t;,])/g, '$1');

/** `Chest: 34`: a name, a blank or a colon, and a number. */
const hasNameWithValue = (cell: string): boolean =>
  [...cell.matchAll(/\p{L}([\s().:[-]*)(?=\d)/gu)].some(([, between]) => /[\s:]/.test(between!));

/** `(38, 42)`: two numbers in brackets, parted. Linear in the line, brackets that never close included. */
const hasList = (line: string): boolean =>
  [...line.matchAll(/[([{]([^()[\]{}]*)[)\]}]/g)].some(
    ([, inside]) => inside!.split(/[,;:/]/).filter((part) => /\d/.test(part)).length > 1,
  );

/** Is each line a row of cells rather than a sentence with commas in it? */
function isRows(lines: readonly string[], delimiter: Delimiter): boolean {
  const rows = lines.filter((line) => line.includes(delimiter));
  if (rows.length < 2 || rows.length * 2 < lines.length) return false;
  return rows.every((row) => {
    const [first = ''] = row.split(delimiter);
    return !hasNameWithValue(first) && !hasList(row);
  });
}

/** Cells from a spreadsheet come with tabs; a single tab before a bracketed list is only spacing. */
function isTabbed(lines: readonly string[]): boolean {
  const rows = lines.filter((line) => /\S\s*\t|^\t.*\S/.test(line));
  if (rows.length === 0 || rows.length * 2 < lines.length) return false;
  return rows.some((row) => row.trimEnd().split('\t').length > 2 || !hasList(row));
}

/** What parts the cells of a table; null where the text is lines as a pattern prints them. */
export function findDelimiter(
  text: string,
  spans: readonly TextSpan[] = linesOf(text),
): Delimiter | null {
  const lines = spans.map(([start, end]) => unquoted(text.slice(start, end)));
  if (isTabbed(lines)) return '\t';
  if (isRows(lines, ';')) return ';';
  return isRows(lines, ',') ? ',' : null;
}
