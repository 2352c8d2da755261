import { toPlain } from '../../units/index.ts';
import type { Delimiter } from './delimiter.ts';
import type { Source } from './source.ts';
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

interface Quoted {
  /** Letters between the quotes, doubled ones counted twice. */
  readonly length: number;
  readonly next: number;
}

/** A quoted cell ends at a quote before a delimiter; any other quote is an inch mark. */
function quotedCell(text: string, start: number, end: number, delimiter: Delimiter): Quoted | null {
  if (text[start] !== '"') return null;
  for (let i = start + 1; i < end; i++) {
    if (text[i] !== '"') continue;
    if (text[i + 1] === '"' && i + 1 < end) {
      i++;
      continue;
    }
    let next = i + 1;
    while (next < end && text[next] === ' ') next++;
    const ends = next === end || text[next] === delimiter;
    return ends ? { length: i - start - 1, next } : null;
  }
  return null;
}

function cutCell(text: string, start: number, end: number, delimiter: Delimiter): Cut {
  const quoted = quotedCell(text, start, end, delimiter);
  if (quoted) return unquote(text, start, quoted.length, quoted.next);
  const found = text.indexOf(delimiter, start);
  const next = found < 0 || found > end ? end : found;
  const places = Array.from({ length: next - start }, (_, k) => start + k);
  return { cell: cellAt(text, places, [start, next]), marks: [], next };
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
  lines: readonly TextSpan[],
  delimiter: Delimiter,
): { grid: TableCell[][]; marks: TextMark[] } {
  const grid: TableCell[][] = [];
  const marks: TextMark[] = [];
  for (const [start, end] of lines) {
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
