import type { Reading } from './reading.ts';
import { cut, markOf, type Source } from './source.ts';
import type { ValuePiece } from './value-pieces.ts';

/** A semicolon before a word, unless the word is a unit. */
const NEXT = /;\s*(?=(?!(?:inch(?:es)?|in|cm|mm)(?!\p{L}))\p{L}{2,})/giu;

/** Parts `Chest 34 (38) in; Length 20 (21) in`: one source for each measurement with numbers. */
export function splitSentences(source: Source, reading: Reading): Source[] {
  const parts: Source[] = [];
  let start = 0;
  for (const match of source.plain.matchAll(NEXT)) {
    const before = source.plain.slice(start, match.index);
    if (!/\d/.test(before) || !/\d/.test(source.plain.slice(match.index))) continue;
    parts.push(cut(source, start, match.index));
    reading.mark(markOf(source, match.index, match.index + 1, 'join'));
    start = match.index + match[0].length;
  }
  return [...parts, cut(source, start)];
}

/**
 * The pieces up to the first word that follows a number outside brackets: in `34 (38)", with 2" ease`
 * the last number belongs to the words, not to a size. The rest stays unread.
 */
export function beforeWords(pieces: readonly ValuePiece[]): readonly ValuePiece[] {
  let depth = 0;
  let begun = false;
  for (const [i, { kind, text }] of pieces.entries()) {
    if (kind === 'open') depth++;
    if (kind === 'close') depth--;
    if (kind === 'number' || kind === 'none') begun = true;
    if (begun && depth <= 0 && kind === 'word' && /\p{L}{2}/u.test(text)) return pieces.slice(0, i);
  }
  return pieces;
}
