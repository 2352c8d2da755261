import { toPlain } from '../../units/index.ts';
import type { TextMark, TextSpan } from './types.ts';

/** A stretch of the pasted text in plain letters, with the way back to the original. */
export interface Source {
  readonly plain: string;
  /** Original index of each plain letter. */
  readonly at: readonly number[];
}

export const sourceOf = (text: string, start = 0, end = text.length): Source => {
  const { plain, at } = toPlain(text.slice(start, end));
  return { plain, at: at.map((index) => index + start) };
};

export const cut = ({ plain, at }: Source, start: number, end = plain.length): Source => ({
  plain: plain.slice(start, end),
  at: at.slice(start, end),
});

/** Where plain letters `start` to `end` (exclusive) stand in the original; empty where they are none. */
export function spanOf({ at }: Source, start: number, end: number): TextSpan {
  const first = at[start] ?? 0;
  return [first, end > start ? (at[end - 1] ?? first) + 1 : first];
}

export const markOf = (
  source: Source,
  start: number,
  end: number,
  as: TextMark['as'],
): TextMark => ({ from: spanOf(source, start, end), as });

/** Lines with something on them, as start and end in the text. */
export function linesOf(text: string): TextSpan[] {
  return [...text.matchAll(/[^\r\n]+/g)]
    .filter(([line]) => line.trim() !== '')
    .map((match) => [match.index, match.index + match[0].length]);
}
