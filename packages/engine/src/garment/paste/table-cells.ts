import { toPlain } from '../../units/index.ts';
import type { Delimiter } from './delimiter.ts';
import { linesOf, type Source } from './source.ts';
import type { TextMark, TextSpan } from './types.ts';

/** One cell of a pasted table, without its quotes. */
export interface TableCell {
  readonly text: string;
  readonly source: Source;
  /** Where an empty cell stands; the cell with its quotes otherwise. */
  readonly from: TextSpan;
}

export const emptyCell = (at: number): TableCell => ({
  text: '',
  source: { plain: '', at: [] },
  from: [at, at],
});

interface Cut {
  readonly cell: TableCell;
  readonly marks: readonly TextMark[];
  /** Index of the delimiter after the cell, or of the end of the line. */
  readonly next: number;
}

/** Builds a cell from the letters at the given places of the text. */
function cellAt(text: string, places: readonly number[], from: TextSpan): TableCell {
  const letters = places.map((i) => text[i]).join('');
  const { plain, at } = toPlain(letters);
  return { text: plain.trim(), source: { plain, at: at.map((i) => places[i]!) }, from };
}

const QUOTED = /^"((?:[^"]|"")*)"[ ]*$/;

/** A quoted cell ends at a quote before a delimiter; any other quote is an inch mark. */
function cutCell(text: string, start: number, end: number, delimiter: Delimiter): Cut {
  let next = text.indexOf(delimiter, start);
  if (next < 0 || next > end) next = end;
  let quoted: RegExpExecArray | null = null;
  for (let i = next; text[start] === '"' && !quoted; ) {
    quoted = QUOTED.exec(text.slice(start, i));
    if (quoted) next = i;
    if (quoted || i >= end) break;
    const after = text.indexOf(delimiter, i + 1);
    i = after < 0 || after > end ? end : after;
  }
  if (!quoted) {
    const places = Array.from({ length: next - start }, (_, k) => start + k);
    return { cell: cellAt(text, places, [start, next]), marks: [], next };
  }
  return unquote(text, start, quoted[1]!.length, next);
}

/** Doubled quotes inside stand for one. */
function unquote(text: string, start: number, length: number, next: number): Cut {
  const places: number[] = [];
  const dropped = [start];
  for (let i = start + 1; i <= start + length; i++) {
    places.push(i);
    if (text[i] === '"') dropped.push(++i);
  }
  dropped.push(start + length + 1);
  const marks = dropped.map((i): TextMark => ({ from: [i, i + 1], as: 'join' }));
  return { cell: cellAt(text, places, [start, next]), marks, next };
}

/** Cuts every line into cells; lines without the delimiter are left out. */
export function tableCells(
  text: string,
  delimiter: Delimiter,
): { grid: TableCell[][]; marks: TextMark[] } {
  const grid: TableCell[][] = [];
  const marks: TextMark[] = [];
  for (const [start, end] of linesOf(text)) {
    if (!text.slice(start, end).includes(delimiter)) continue;
    const row: TableCell[] = [];
    for (let at = start; at <= end; ) {
      const piece = cutCell(text, at, end, delimiter);
      row.push(piece.cell);
      marks.push(...piece.marks);
      if (piece.next < end) marks.push({ from: [piece.next, piece.next + 1], as: 'join' });
      at = piece.next + 1;
    }
    grid.push(row);
  }
  return { grid, marks };
}
