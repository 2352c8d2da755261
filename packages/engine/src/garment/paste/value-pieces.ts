import type { Source } from './source.ts';
import type { PrintedUnit } from './types.ts';

/** Pieces of the part of a line that holds numbers. */
export interface ValuePiece {
  readonly kind:
    | 'number'
    | 'unit'
    | 'span'
    | 'open'
    | 'close'
    | 'separator'
    | 'dash'
    | 'none'
    | 'word';
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Fractions of a tape, and those over 0, to be refused. One of a chain such as `1/2/3` is no fraction. */
const FRACTION =
  '(?:1\\/2|[12]\\/3|[13]\\/4|[1357]\\/8|(?:1[135]|[13579])\\/16|(?:[12][13579]|3[01]|[13579])\\/32|\\d+\\/0+)(?![\\d/])';
const UNIT = 'inch(?:es)?|ins?|cms?|centimet(?:re|er)s?|mms?|millimet(?:re|er)s?';
/** Flat or around, said after a number. */
const SPAN =
  '(?:(?:measured|laid|lying|in|all|the|way)\\s+)*(?:a?round|circumference|girth|flat|across|(?:pit|armpit) to (?:pit|armpit))(?![\\p{L}\\d])';
const PIECE = new RegExp(
  [
    `(?<number>(?<![\\p{L}\\d])(?:\\d+(?:\\s+|\\s?-\\s?|\\s+and\\s+)${FRACTION}|(?<!\\/)${FRACTION}|(?:\\d[\\d.,]*)?\\d(?=(?:${UNIT})(?![\\p{L}\\d])|[^\\p{L}\\d]|$)|\\.\\d+(?![\\p{L}\\d])))`,
    `(?<none>n\\/?a(?![\\p{L}\\d]))`,
    `(?<unit>(?:(?:${UNIT})(?![\\p{L}\\d])\\.?)|''|")`,
    `(?<span>(?<![\\p{L}\\d])${SPAN})`,
    '(?<open>[([{])',
    '(?<close>[)\\]}])',
    '(?<separator>[,;:/|=&])',
    '(?<dash>-+|(?<=\\d\\s*)to(?=\\s*\\d))',
    '(?<word>[\\p{L}\\d]+|\\S)',
  ].join('|'),
  'giu',
);

export function valuePieces({ plain }: Source): ValuePiece[] {
  return [...plain.matchAll(PIECE)].map((match) => {
    const [kind] = Object.entries(match.groups ?? {}).find(([, text]) => text !== undefined) ?? [];
    const [text] = match;
    const start = match.index;
    return { kind: (kind ?? 'word') as ValuePiece['kind'], text, start, end: start + text.length };
  });
}

/** The unit that a piece of kind `unit` names. */
export function unitNamed(text: string): PrintedUnit {
  const word = text.toLowerCase();
  if (word.startsWith('c')) return 'cm';
  return word.startsWith('m') ? 'mm' : 'in';
}
