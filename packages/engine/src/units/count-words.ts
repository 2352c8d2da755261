import { LENGTH } from './length-units.ts';
import type { Lexeme } from './lexemes.ts';
import type { Rational } from './rational.ts';

export type Counted = 'stitches' | 'rows';

const STITCHES = new Set(['st', 'sts', 'stitch', 'stitches']);
const ROWS = new Set(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds', 'course', 'courses']);
const JOINS = new Set(
  'and & + , ; = : / - . ( ) [ ] × x per over to for by a an the each square sq gauge tension'.split(
    ' ',
  ),
);

export function countedWord(word: string): Counted | null {
  if (STITCHES.has(word)) return 'stitches';
  return ROWS.has(word) ? 'rows' : null;
}

/** Words and marks that only join counts and lengths. `in` joins after a counted word: `20 sts in 4 in`. */
export const isJoin = (pieces: readonly Lexeme[], i: number): boolean => {
  const word = pieces[i]?.text ?? '';
  if (word === 'in') return countedWord(pieces[i - 1]?.text ?? '') !== null;
  return JOINS.has(word);
};

/** Millimetres in one of the length unit named, exactly; null for another word. */
export const unitOfLength = (word: string): Rational | null =>
  LENGTH.units.find(({ words }) => words.includes(word))?.factor ?? null;
