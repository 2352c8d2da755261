import {
  countsOfPiece,
  outlineFromCounts,
  type PieceCounts,
  type Pitch,
  readCounts,
  recount,
  type Step,
  sockCounts,
} from '@dryflat/engine/counts';
import { type OutlinePiece, outlinePieces } from '@dryflat/engine/garment';
import type { Instruction } from '@dryflat/record';
import type { CountsAnswer, CountsAsk, PartCounts, PieceAnswer, TextAnswer } from './protocol.ts';

const drawn = (
  steps: readonly Step[],
  pitch: Pitch,
  name: OutlinePiece['name'],
): OutlinePiece | null => {
  const outline = outlineFromCounts(steps, pitch, name);
  return outline.ok ? outline.value : null;
};

const partOf = (part: PartCounts['part'], counts: PieceCounts): PartCounts => ({
  part,
  counts,
  drawn: drawn(counts.steps, counts.pitch, counts.name),
});

const NOTHING = { parts: [], heel: null, faults: [] };

const isSock = (piece: OutlinePiece): boolean =>
  piece.name === 'sock' && piece.details.some(({ kind }) => kind === 'heel');

const sockOf = (outline: OutlinePiece, { mine, repeat }: CountsAsk): PieceAnswer => {
  const sock = sockCounts(outline, { pitch: mine, repeat });
  if (!sock.ok) return { ...NOTHING, outline, faults: sock.faults };
  const { leg, heel, foot } = sock.value;
  return { ...NOTHING, outline, parts: [partOf('leg', leg), partOf('foot', foot)], heel };
};

const pieceOf = (outline: OutlinePiece, asked: CountsAsk): PieceAnswer => {
  if (isSock(outline)) return sockOf(outline, asked);
  const counts = countsOfPiece(outline, { pitch: asked.mine, repeat: asked.repeat });
  if (!counts.ok) return { ...NOTHING, outline, faults: counts.faults };
  return { ...NOTHING, outline, parts: [partOf(null, counts.value)] };
};

const UNREAD = {
  steps: null,
  faults: [],
  recount: null,
  recountFaults: [],
  theirs: null,
  unchanged: null,
  mine: null,
};

const recounted = (id: string, steps: readonly Step[], asked: CountsAsk): TextAnswer => {
  if (asked.pattern === null)
    return { ...UNREAD, id, steps, unchanged: drawn(steps, asked.mine, 'piece') };
  const { theirs, mine } = asked.pattern;
  const outlines = {
    theirs: drawn(steps, theirs, 'piece'),
    unchanged: drawn(steps, mine, 'piece'),
  };
  const found = recount(steps, theirs, mine, asked.repeat);
  return found.ok
    ? {
        ...UNREAD,
        ...outlines,
        id,
        steps,
        recount: found.value,
        mine: drawn(found.value.steps, mine, 'piece'),
      }
    : { ...UNREAD, ...outlines, id, steps, recountFaults: found.faults };
};

const textOf = ({ id, text }: Instruction, asked: CountsAsk): TextAnswer => {
  if (text.trim() === '') return { ...UNREAD, id };
  const read = readCounts(text, { field: '', rowMm: (asked.pattern?.theirs ?? asked.mine).row });
  return read.ok ? recounted(id, read.value, asked) : { ...UNREAD, id, faults: read.faults };
};

/** Every piece of the garment counted, and every text of the pattern read and recounted. */
export const answerCounts = (asked: CountsAsk): CountsAnswer => ({
  kind: 'counts',
  turn: asked.turn,
  pieces: outlinePieces(asked.kind, asked.sizes).map((piece) => pieceOf(piece, asked)),
  texts: asked.instructions.map((each) => textOf(each, asked)),
});
