import { type Pitch, type Step, type Words, writeCounts, writeHeel } from '@dryflat/engine/counts';
import type { PartCounts, PieceAnswer } from '../../worker/counts/index.ts';

type Print = (sentence: string) => string;

/** Steps as numbered by their place, lengths in the knitter's unit. */
export const linesOf = (
  steps: readonly Step[],
  words: Words,
  print: Print,
  pitch?: Pick<Pitch, 'row'>,
): string[] => writeCounts(steps, { words, pitch }).map(print);

const PARTS = { leg: 'Leg, from the cuff down', foot: 'Foot, from the heel' } as const;

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** `Sleeve (two, the second mirrored)`. */
export const pieceTitle = ({
  outline: { name, copies, symmetric },
}: Pick<PieceAnswer, 'outline'>): string => {
  if (copies === 1) return capital(name);
  // A sleeve is drawn folded, and is alike on both sides.
  return symmetric || name === 'sleeve'
    ? `${capital(name)} (two alike)`
    : `${capital(name)} (two, the second mirrored)`;
};

export const partTitle = ({ part }: Pick<PartCounts, 'part'>): string | null =>
  part === null ? null : PARTS[part];

export const heelLine = ({ heel }: PieceAnswer): string | null =>
  heel === null ? null : writeHeel(heel);

/** A piece as text to paste elsewhere: its title, then a line for each step. */
export const pieceText = (piece: PieceAnswer, words: Words, print: Print): string => {
  const heel = heelLine(piece);
  const parts = piece.parts.map((part) =>
    [
      partTitle(part),
      ...linesOf(part.counts.steps, words, print, part.counts.pitch).map(
        (line, at) => `${at + 1}. ${line}`,
      ),
      ...(part.part === 'leg' && heel !== null ? ['', heel] : []),
    ].filter((line) => line !== null),
  );
  return `${[pieceTitle(piece), ...parts.map((lines) => lines.join('\n'))].join('\n\n')}\n`;
};
