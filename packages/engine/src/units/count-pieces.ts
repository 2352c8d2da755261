import { type Counted, countedWord, isJoin, unitOfLength } from './count-words.ts';
import type { Lexeme } from './lexemes.ts';
import { readNumber, type Written } from './number.ts';
import { type Read, read, unread } from './problem.ts';
import { type Rational, times } from './rational.ts';

/** What a gauge line is made of. */
export type CountPiece =
  | { readonly kind: 'count'; readonly of: Counted; readonly written: Written }
  | { readonly kind: 'length'; readonly mm: Rational }
  | { readonly kind: 'remark'; readonly word: string };

type Taken = { readonly piece: CountPiece; readonly next: number };

/** `10 x 10 cm`: the first number takes the unit of the second. */
function unitFurtherOn(pieces: readonly Lexeme[], i: number): Rational | null {
  const cross = pieces[i]?.text;
  if (cross !== 'x' && cross !== '×' && cross !== 'by') return null;
  return pieces[i + 1]?.kind === 'number' ? unitOfLength(pieces[i + 2]?.text ?? '') : null;
}

function takeNumber(pieces: readonly Lexeme[], i: number, bare: Counted | undefined): Read<Taken> {
  const number = readNumber(pieces, i);
  if (!number.ok) return number;
  const written = number.value;
  const { next } = written;
  const word = pieces[next]?.text ?? '';
  const of = countedWord(word);
  if (of) return read({ piece: { kind: 'count', of, written }, next: next + 1 });
  const unit = unitOfLength(word);
  if (unit)
    return read({ piece: { kind: 'length', mm: times(written.value, unit) }, next: next + 1 });
  const shared = unitFurtherOn(pieces, next);
  if (shared) return read({ piece: { kind: 'length', mm: times(written.value, shared) }, next });
  if (bare) return read({ piece: { kind: 'count', of: bare, written }, next });
  return unread(
    'bare-number',
    `the number ${pieces[i]?.text} has no word for what it counts`,
    'Add sts or rows for a count, cm or in for a length.',
  );
}

/** `per inch`, `to the cm`: a unit without a number is one of it, but only straight after a join. */
function takeWord(pieces: readonly Lexeme[], i: number): Taken {
  const word = pieces[i]!.text;
  const unit = i > 0 && isJoin(pieces, i - 1) ? unitOfLength(word) : null;
  return { piece: unit ? { kind: 'length', mm: unit } : { kind: 'remark', word }, next: i + 1 };
}

/** Splits a gauge line into counts, lengths and words that belong to neither. */
export function countPieces(
  pieces: readonly Lexeme[],
  bare: Counted | undefined,
): Read<CountPiece[]> {
  const found: CountPiece[] = [];
  let i = 0;
  while (i < pieces.length) {
    if (pieces[i]!.kind !== 'number' && isJoin(pieces, i)) {
      i++;
      continue;
    }
    const first = !found.some((piece) => piece.kind === 'count');
    const taken: Read<Taken> =
      pieces[i]!.kind === 'number'
        ? takeNumber(pieces, i, first ? bare : undefined)
        : read(takeWord(pieces, i));
    if (!taken.ok) return taken;
    found.push(taken.value.piece);
    i = taken.value.next;
  }
  return read(found);
}
