import type { CommaMeaning } from './comma.ts';
import type { ValuePiece } from './value-pieces.ts';

/** `1.250,5`: a point before three digits and a comma after them. */
const THOUSANDS = /^\d{1,3}(?:\.\d{3})+,\d+$/;

/** The parts of `38,42,46`, with commas between them. */
function splitAtCommas(piece: ValuePiece): ValuePiece[] {
  const parts: ValuePiece[] = [];
  for (const match of piece.text.matchAll(/[^,]+|,/g)) {
    const start = piece.start + match.index;
    const kind = match[0] === ',' ? 'separator' : 'number';
    parts.push({ kind, text: match[0], start, end: start + match[0].length });
  }
  return parts;
}

/** Applies what the commas of a line mean. A number like `1.250,5` stays whole, to be refused later. */
export function splitNumbers(pieces: readonly ValuePiece[], comma: CommaMeaning): ValuePiece[] {
  return pieces.flatMap((piece) => {
    const tight = piece.kind === 'number' && piece.text.includes(',');
    if (!tight || comma !== 'separator' || THOUSANDS.test(piece.text)) return [piece];
    return splitAtCommas(piece);
  });
}
