import type { ValuePiece } from './value-pieces.ts';

/** A number, a range or a dash, in its place in the line. */
export interface Value {
  /** Text of the number; of the low end of a range; null for a dash. */
  readonly low: string | null;
  /** Text of the high end of a range; null otherwise. */
  readonly high: string | null;
  readonly start: number;
  readonly end: number;
}

const numberValue = (piece: ValuePiece): Value => ({
  low: piece.text,
  high: null,
  start: piece.start,
  end: piece.end,
});
const noneValue = (piece: ValuePiece): Value => ({ ...numberValue(piece), low: null });
export const gapAfter = ({ end }: ValuePiece): Value => ({
  low: null,
  high: null,
  start: end,
  end,
});

/** `-` joins two numbers into a range, unless a third follows: `34-36-38` are three sizes. */
function joinsRange(pieces: readonly ValuePiece[], i: number): boolean {
  const kinds = [-2, -1, 0, 1, 2, 3].map((k) => pieces[i + k]?.kind);
  const chain = (kinds[0] === 'dash' && i >= 3) || kinds[4] === 'dash';
  return kinds[1] === 'number' && kinds[3] === 'number' && !chain;
}

/** A dash that is neither a range nor a joint of a chain stands for a size without this measurement. */
function standsForNone(pieces: readonly ValuePiece[], i: number): boolean {
  const isNumber = (k: number) => pieces[k]?.kind === 'number';
  return pieces[i]!.text.startsWith('-') && !(isNumber(i - 1) && isNumber(i + 1));
}

/** A minus sign stands before its number; a dash between two numbers does not. */
const isMinus = (pieces: readonly ValuePiece[], i: number): boolean =>
  pieces[i + 1]?.kind === 'number' &&
  pieces[i + 1]!.start === pieces[i]!.end &&
  pieces[i - 1]?.kind !== 'number';

const isEdge = (piece: ValuePiece | undefined, bracket: 'open' | 'close'): boolean =>
  piece?.kind === bracket || (piece?.kind === 'separator' && ',;'.includes(piece.text));

/** `(38, tbc, 42)`: a word in the place of a number keeps that place, to be refused when it is read. */
const holdsPlace = (pieces: readonly ValuePiece[], i: number): boolean =>
  isEdge(pieces[i - 1], 'open') && isEdge(pieces[i + 1], 'close');

/** `(38, , 42)`: nothing stands between piece `i` and the next, where a number should. */
export const isGap = (pieces: readonly ValuePiece[], i: number): boolean =>
  isEdge(pieces[i], 'open') &&
  isEdge(pieces[i + 1], 'close') &&
  (pieces[i]!.kind === 'separator' || pieces[i + 1]!.kind === 'separator');

type Taken = { readonly value: Value; readonly next: number };

/** The value that starts at piece `i`, if one does. */
export function valueAt(pieces: readonly ValuePiece[], i: number): Taken | null {
  const piece = pieces[i]!;
  const further = pieces[i + 1];
  if (piece.kind === 'number') {
    const high = pieces[i + 2];
    if (further?.kind !== 'dash' || !high || !joinsRange(pieces, i + 1))
      return { value: numberValue(piece), next: i + 1 };
    return { value: { ...numberValue(piece), high: high.text, end: high.end }, next: i + 3 };
  }
  if (piece.kind === 'none') return { value: noneValue(piece), next: i + 1 };
  if (piece.kind === 'word')
    return holdsPlace(pieces, i) ? { value: numberValue(piece), next: i + 1 } : null;
  if (piece.kind === 'dash' && further && isMinus(pieces, i))
    return {
      value: { ...numberValue(further), low: `-${further.text}`, start: piece.start },
      next: i + 2,
    };
  if (piece.kind === 'dash')
    return standsForNone(pieces, i) ? { value: noneValue(piece), next: i + 1 } : null;
  return null;
}
