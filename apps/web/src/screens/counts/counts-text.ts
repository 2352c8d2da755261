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
  // A sleeve is drawn folded and a sock from the side; what is knit is alike on both sides.
  return symmetric || name === 'sleeve' || name === 'sock'
    ? `${capital(name)} (two alike)`
    : `${capital(name)} (two, the second mirrored)`;
};

export const partTitle = ({ part }: Pick<PartCounts, 'part'>): string | null =>
  part === null ? null : PARTS[part];

export const heelLine = ({ heel }: PieceAnswer): string | null =>
  heel === null ? null : writeHeel(heel);

/** The steps of a part. A foot goes on where the heel ends: its stitches are there already. */
export const partLines = (
  { part, counts: { steps, pitch } }: PartCounts,
  words: Words,
  print: Print,
): string[] => {
  const lines = linesOf(steps, words, print, pitch);
  const [first] = steps;
  if (part !== 'foot' || first?.kind !== 'cast-on') return lines;
  return [`Go on in the round over all ${first.stitches} stitches.`, ...lines.slice(1)];
};

/** A piece as text to paste elsewhere: its title, then a line for each step. */
export const pieceText = (piece: PieceAnswer, words: Words, print: Print): string => {
  const heel = heelLine(piece);
  const parts = piece.parts.map((part) =>
    [
      partTitle(part),
      ...partLines(part, words, print).map((line, at) => `${at + 1}. ${line}`),
      ...(part.part === 'leg' && heel !== null ? ['', heel] : []),
    ].filter((line) => line !== null),
  );
  return `${[pieceTitle(piece), ...parts.map((lines) => lines.join('\n'))].join('\n\n')}\n`;
};
