import type { Direction } from '../../fabric/index.ts';
import type { FlatMillimetres, Millimetres } from '../../units/index.ts';
import type { Notice } from '../forecast-types.ts';

/** A point of a piece, in millimetres; x to the right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * What an edge of a piece is, because that decides what the fabric beside it can do.
 *
 * `join` is where live stitches go on into another piece, `gathered` where the last stitches are
 * drawn up on the yarn, `picked-up` where a band is worked on later.
 */
export type EdgeKind =
  | 'cast-on'
  | 'bound-off'
  | 'seam'
  | 'selvedge'
  | 'neckline'
  | 'fold'
  | 'join'
  | 'gathered'
  | 'picked-up';

export interface LineSegment {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  readonly edge: EdgeKind;
}

/** A cubic Bézier curve with control points `c1` and `c2`. */
export interface CubicSegment {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
  readonly edge: EdgeKind;
}

export type Segment = LineSegment | CubicSegment;

/** Where the label of a dimension sits, seen from its piece. */
export type Side = 'left' | 'right' | 'top' | 'bottom' | 'inside';

export interface Dimension {
  readonly landmark: string;
  /** Along courses or along wales of the fabric, which need not be across or down the drawing. */
  readonly direction: Direction;
  readonly from: Point;
  readonly to: Point;
  readonly side: Side;
  /** True where its line is drawn clear of the piece on that side, false where it lies on the spot. */
  readonly outside: boolean;
  /** The number asked for. The distance `from`–`to` differs from it only where a notice says so. */
  readonly mm: Millimetres;
  /** True where nobody gave this number and a usual proportion filled it. */
  readonly assumed: boolean;
}

export type PieceName =
  | 'front'
  | 'back'
  | 'sleeve'
  | 'hat'
  | 'sock'
  | 'mitten'
  | 'shawl'
  | 'blanket'
  | 'piece';

/** A line drawn on a piece that is no edge of it: the top of the ribbing, the other neckline. */
export interface Detail {
  readonly kind: 'ribbing' | 'back-neckline' | 'armhole-end' | 'heel' | 'toe' | 'wrist';
  readonly path: readonly Segment[];
}

export interface OutlinePiece {
  readonly name: PieceName;
  /** How many the garment has; where it has two, the second is the mirror image. */
  readonly copies: 1 | 2;
  /** True where the outline equals its mirror image in the line x = 0. */
  readonly symmetric: boolean;
  /** Closed, clockwise as seen on screen; each segment starts where the one before it ends. */
  readonly path: readonly Segment[];
  readonly details: readonly Detail[];
  readonly dimensions: readonly Dimension[];
  /** A piece whose drawing shows this one too (its neckline as a detail), or null. */
  readonly shownOn: PieceName | null;
}

/** Flat millimetres by landmark: girths halved, lengths as they are. What is missing is filled. */
export type OutlineSizes = Readonly<Record<string, FlatMillimetres>>;

/** A size that nobody gave, and the proportion that it was drawn with. */
export interface Assumed {
  readonly landmark: string;
  readonly mm: Millimetres;
  readonly why: string;
}

/** A size that could not be drawn as given. `text` carries lengths as `{mm:123.4}` tokens. */
export interface OutlineNotice extends Notice {
  readonly landmark: string;
  readonly givenMm: number;
  /** What was drawn instead; null where a usual proportion was. */
  readonly drawnMm: number | null;
}

export interface Outline {
  readonly pieces: readonly OutlinePiece[];
  readonly assumed: readonly Assumed[];
  readonly notices: readonly OutlineNotice[];
}
