import { markOf, type Source, spanOf } from './source.ts';
import type { TextMark, TextSpan } from './types.ts';

export interface Label {
  readonly text: string;
  readonly from: TextSpan;
}

const SIZES =
  /^[\s"'*]*(?:(?:garment|available|finished|pattern)\s+)?(?:sizes?|ages?)\b(?!\s+(?:\d|xx?s\b).*\b(?:chest|bust)\b)/i;

const LETTER_SIZE = /^(?:\d?x{0,5}[sml]|\d+x|small|medium|large)$/i;

/** A label in letters: `XS`, `2XL`, `medium`. */
export const isLetterSize = (text: string): boolean => LETTER_SIZE.test(text.trim());

/** `S (M, L)` or `To fit: XS (S, M)`: nothing but sizes in letters, two at least. */
function listsSizes(line: string): boolean {
  const words = line
    .replace(/^[^:\d]*:/, '')
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== '');
  return words.length > 1 && words.every(isLetterSize);
}

/** Does a line, or the first cell of a table, say that sizes follow? */
export const namesSizes = (name: string): boolean =>
  (SIZES.test(name) && !/\bto fit\b/i.test(name)) || listsSizes(name);

/** `One size` is one label. */
const NOWHERE = /(?!)/;

/** What parts the labels of a line: brackets and commas; without them slashes, dashes or spaces. */
function separatorOf(plain: string): RegExp {
  if (/[()[\]{},;]/.test(plain)) return /[()[\]{},;:|]/;
  if (/[/|:]/.test(plain)) return /[/|:]/;
  if (/\s-+\s/.test(plain)) return /-/;
  const words = plain.split(/\s+/).filter((word) => word !== '');
  return words.every((word) => isLetterSize(word) || /\d/.test(word)) ? /\s/ : NOWHERE;
}

/** Words after the labels that say what they count. */
const AGE_WORD = /^(?:years?|yrs?|months?|mths?|mos?|inch(?:es)?|in|cm|"|'')\.?$/i;

/** Labels of `XS (S, M, L) (XL, 2X)`, `XS/S/M`, `34[38:42]` or `2-3 (4-5, 6-7) years`. */
export function readLabels(source: Source): { labels: Label[]; marks: TextMark[] } {
  const separator = separatorOf(source.plain);
  const labels: Label[] = [];
  const marks: TextMark[] = [];
  let start = 0;
  const close = (end: number) => {
    const raw = source.plain.slice(start, end);
    const text = raw.trim();
    const from = start + raw.length - raw.trimStart().length;
    if (text === '') return;
    const age = AGE_WORD.test(text);
    marks.push(markOf(source, from, from + text.length, age ? 'unit' : 'size'));
    if (!age) labels.push({ text, from: spanOf(source, from, from + text.length) });
  };
  for (let i = 0; i <= source.plain.length; i++) {
    if (i < source.plain.length && !separator.test(source.plain[i]!)) continue;
    close(i);
    if (i < source.plain.length) marks.push(markOf(source, i, i + 1, 'join'));
    start = i + 1;
  }
  return { labels, marks };
}
