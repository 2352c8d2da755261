import { type Fault, fail, type Millimetres, mm, ok, type Result } from '../../units/index.ts';
import type { Notice } from '../forecast-types.ts';
import type { Dimension, OutlinePiece, PieceName } from '../outline/index.ts';
import { type BaseCounts, baseCounts } from './base-counts.ts';
import { type Fabric, fabricOf, workedIn } from './fabric-rows.ts';
import { type PieceShape, pieceShape } from './piece-shape.ts';
import { pieceStitches } from './piece-stitches.ts';
import { stepsOfGrid } from './read-grid.ts';
import { shapePiece } from './shape-piece.ts';
import { stepsOf } from './steps-of.ts';
import { tidySteps } from './tidy.ts';
import type { Pitch, Repeat, Step } from './types.ts';
import { lengthFaults } from './whole.ts';

export interface PieceQuestion {
  readonly pitch: Pitch;
  /** Of the main stitch pattern; the count above the ribbing is put on it. */
  readonly repeat?: Repeat | undefined;
}

/** A dimension of the outline in stitches or rows, and what rounding does to it. */
export interface Measure {
  readonly landmark: string;
  readonly direction: 'width' | 'length';
  /** As the outline has it: flat. */
  readonly wantedMm: Millimetres;
  /** Stitches of the whole piece (all around a tube), or rows. */
  readonly count: number;
  /** What these measure, flat. */
  readonly mm: Millimetres;
  readonly errorMm: number;
}

export interface PieceCounts {
  readonly name: PieceName;
  readonly copies: 1 | 2;
  readonly pitch: Pitch;
  readonly steps: readonly Step[];
  readonly measures: readonly Measure[];
  /** Stitches worked in all rows of one copy. */
  readonly stitches: number;
  /** How far the worked edge is from the outline, in stitches: at worst (a row up or down), and root mean square. */
  readonly fit: { readonly worst: number; readonly rms: number };
  readonly notices: readonly Notice[];
}

const tooSmall = (piece: OutlinePiece, given: string): Fault => ({
  code: 'piece-too-small',
  field: piece.name,
  given,
  problem: 'the piece is too small, or too oddly shaped, to be knit at this gauge',
  mend: 'Look at its measurements and at the gauge, which are millimetres.',
});

/**
 * More than hands knit in one piece: at 30 stitches a minute two million are 1,100 hours. Rows likewise:
 * ten metres of rows of two millimetres. Set wide on purpose; far beyond, counting takes minutes.
 */
const MOST_STITCHES = 2_000_000;
const MOST_ROWS = 5_000;

const tooLarge = (piece: OutlinePiece, rows: number, stitches: number): Fault => ({
  code: 'piece-too-large',
  field: piece.name,
  given: `${rows} rows`,
  problem: `at this gauge the piece has about ${Math.round(stitches).toLocaleString('en')} stitches, more than anybody knits in one`,
  mend: 'Look at its measurements and at the gauge.',
});

const isRound = (shape: PieceShape): boolean => shape.form === 'round';

const measureWidth = (d: Dimension, shape: PieceShape, fabric: Fabric, pitch: Pitch) => {
  const row = Math.min(2 * Math.round(shape.heightOf(d.from.y) / 2), shape.rows);
  const { inner, outer } = fabric.rows[row]!;
  const neck = d.landmark === 'neck-width';
  const half = fabric.form === 'half';
  const count = neck ? (half ? inner : 2 * inner) : half ? outer - inner : 2 * outer;
  const flat = (count * pitch.stitch) / (isRound(shape) || isFolded(d, shape) ? 2 : 1);
  return { count, flat };
};

/** A sleeve is drawn folded: its widths are half of what is knit. */
const isFolded = (d: Dimension, shape: PieceShape): boolean =>
  shape.form === 'whole' && d.from.x === 0 && d.direction === 'width' && d.to.x > 0;

const measureOf = (
  d: Dimension,
  shape: PieceShape,
  fabric: Fabric,
  pitch: Pitch,
): Measure | null => {
  const level = Math.abs(d.from.y - d.to.y) < 1e-9;
  const upright = Math.abs(d.from.x - d.to.x) < 1e-9;
  const across = d.direction === 'width' && level;
  if (!across && !(d.direction === 'length' && upright)) return null;
  const row = (y: number) => 2 * Math.round(shape.heightOf(y) / 2);
  const { count, flat } = across
    ? measureWidth(d, shape, fabric, pitch)
    : { count: row(d.from.y) - row(d.to.y), flat: 0 };
  const size = across ? flat : Math.abs(count) * pitch.row;
  return {
    landmark: d.landmark,
    direction: d.direction,
    wantedMm: d.mm,
    count: Math.abs(count),
    mm: mm(size),
    errorMm: size - d.mm,
  };
};

const BODY: ReadonlySet<string> = new Set(['front', 'back']);

/** What the numbers leave open. Common practice, no source. */
const noticesOf = (piece: OutlinePiece, shape: PieceShape, base: BaseCounts): Notice[] => {
  const notices: Notice[] = [];
  const say = (code: string, text: string) => notices.push({ code, text });
  if (shape.ribs > 0)
    say(
      'rib-at-main-gauge',
      'Ribbing is counted at the gauge of the main stitch; a swatch of it tells how far it draws in.',
    );
  if (base.castOn.count !== base.main.count)
    say(
      'taken-up-above-rib',
      'The ribbing has another number of stitches than what is above it: its last row takes up the difference.',
    );
  if (piece.name === 'shawl' && piece.path.every((s) => s.edge !== 'cast-on'))
    say('from-the-point', 'These counts are for working from the bottom edge up, in level rows.');
  if (BODY.has(piece.name) && piece.path.some((s) => s.edge === 'fold'))
    say(
      'yoke-in-one',
      'A round yoke is knit in one with the sleeves: what is shaped above the underarm here is this piece’s share of its decreases.',
    );
  if (piece.name === 'mitten')
    say(
      'thumb-apart',
      'The thumb is not in these counts: work it on stitches set aside at its foot.',
    );
  return notices;
};

/** Seams take a stitch or none at each side: nothing is added for them. */
const fitted = (piece: OutlinePiece, question: PieceQuestion): Result<PieceCounts> => {
  const { pitch, repeat } = question;
  const shape = pieceShape(piece, pitch);
  const drawn = pieceStitches(piece, pitch);
  if (shape.rows > MOST_ROWS || drawn > MOST_STITCHES)
    return fail(tooLarge(piece, shape.rows, drawn));
  const base = baseCounts(shape, pitch, repeat, piece.name === 'hat');
  if (!base.ok) return base;
  const shaped = shapePiece(shape, base.value);
  if (shaped === null) return fail(tooSmall(piece, `{mm:${shape.profile.heightMm}}`));
  const fabric = fabricOf(shaped.schedule);
  if (!fabric.ok) return fail(tooSmall(piece, fabric.faults[0]!.problem));
  const measures = piece.dimensions.flatMap((d) => measureOf(d, shape, fabric.value, pitch) ?? []);
  const unit = shape.form === 'round' ? base.value.places / 2 : 1;
  return ok({
    name: piece.name,
    copies: piece.copies,
    pitch,
    steps: stepsOf(shaped.schedule, fabric.value),
    measures,
    stitches: workedIn(fabric.value),
    fit: {
      worst: unit * Math.max(...shaped.fits.map((fit) => fit.worst)),
      rms: unit * Math.max(...shaped.fits.map((fit) => fit.rms)),
    },
    notices: noticesOf(piece, shape, base.value),
  });
};

/** The counts of a piece at a gauge: cast-on, ribbing, shaping of every edge, and what rounding does. */
export const countsOfPiece = (
  piece: OutlinePiece,
  question: PieceQuestion,
): Result<PieceCounts> => {
  const faults = lengthFaults([
    ['pitch.stitch', question.pitch.stitch, 'the width of a stitch'],
    ['pitch.row', question.pitch.row, 'the height of a row'],
  ]);
  if (faults.length > 0) return fail(...faults);
  if (isWholeSock(piece)) return fail(notAPiece(piece));
  return fitted(piece, question);
};

/** A sock as it is drawn from the side; its leg and its foot alone are tubes. */
const isWholeSock = (piece: OutlinePiece): boolean =>
  piece.name === 'sock' && piece.details.some((detail) => detail.kind === 'heel');

const notAPiece = (piece: OutlinePiece): Fault => ({
  code: 'piece-in-parts',
  field: piece.name,
  given: piece.name,
  problem: 'a sock turns its heel, which level rows do not draw',
  mend: 'Ask for the counts of its leg, heel and foot (sockCounts).',
});

/**
 * The steps of an outline at a gauge. One whose corners lie on whole stitches and rows, as
 * `outlineFromCounts` draws it, is read exactly; any other is followed as `countsOfPiece` does.
 */
export const countsFromOutline = (
  piece: OutlinePiece,
  question: PieceQuestion,
): Result<readonly Step[]> => {
  const exact = stepsOfGrid(piece, question.pitch);
  if (exact !== null) return tidySteps(exact, question.pitch);
  const found = countsOfPiece(piece, question);
  return found.ok ? ok(found.value.steps) : found;
};
