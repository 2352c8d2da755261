import type { SizeTable, TextMark, UnreadText } from '@dryflat/engine/garment';

/** A stretch of a line and what it was taken for; `plain` for blanks and joints between. */
export interface LinePart {
  readonly text: string;
  readonly as: TextMark['as'] | 'unread' | 'plain';
}

export interface TextLine {
  readonly start: number;
  readonly parts: readonly LinePart[];
  /** What was not understood in it. */
  readonly unread: readonly UnreadText[];
  /** It holds no measurement at all. */
  readonly idle: boolean;
}

const HOLDS_NONE = 'table-no-values';
/** What a line has that holds no measurement: what was left out, and what stands between. */
const IDLE: ReadonlySet<LinePart['as']> = new Set(['unread', 'plain', 'join']);

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly as: LinePart['as'];
}

const partsOf = (
  text: string,
  start: number,
  end: number,
  pieces: readonly Piece[],
): LinePart[] => {
  const parts: LinePart[] = [];
  let at = start;
  for (const piece of pieces) {
    const from = Math.max(piece.start, at);
    const to = Math.min(piece.end, end);
    if (to <= from) continue;
    if (from > at) parts.push({ text: text.slice(at, from), as: 'plain' });
    parts.push({ text: text.slice(from, to), as: piece.as });
    at = to;
  }
  if (at < end) parts.push({ text: text.slice(at, end), as: 'plain' });
  return parts;
};

/** The pasted text line by line, every letter of it in place, with what each stretch was taken for. */
export const textLines = (
  text: string,
  { marks, unread }: Pick<SizeTable, 'marks' | 'unread'>,
): TextLine[] => {
  const pieces: Piece[] = [
    ...marks.map(({ from, as }) => ({ start: from[0], end: from[1], as })),
    ...unread.map(({ from }) => ({ start: from[0], end: from[1], as: 'unread' as const })),
  ].sort((a, b) => a.start - b.start);
  const lines: TextLine[] = [];
  for (const { 0: line, index } of text.matchAll(/[^\r\n]+/g)) {
    const end = index + line.length;
    const here = unread.filter(({ from }) => from[0] >= index && from[0] < end);
    const parts = partsOf(text, index, end, pieces);
    const idle =
      here.every(({ fault }) => fault.code === HOLDS_NONE) && parts.every(({ as }) => IDLE.has(as));
    lines.push({ start: index, parts, unread: here, idle });
  }
  return lines;
};
