import type { PiecePlan, PinPlaced } from '@dryflat/engine/blocking';
import { flattenPath, type OutlinePiece, type Point } from '@dryflat/engine/garment';
import type { PaperInput } from '../input/paper-input.ts';

export interface FullSizeLine {
  readonly what: 'wanted' | 'pinned';
  /** A closed chain: the last point is the first again. */
  readonly points: readonly Point[];
}

export interface FullSizePin {
  readonly pin: PinPlaced;
  readonly at: Point;
}

/** A piece as it is drawn at full size, in millimetres of its own. */
export interface FullSizePiece {
  readonly name: string;
  /** True where the garment has a second one that is its mirror image. */
  readonly mirrored: boolean;
  readonly lines: readonly FullSizeLine[];
  readonly pins: readonly FullSizePin[];
}

/** Chords stray from their curve by no more than this, mm: a tenth of what the page is true to. */
const CHORD = 0.05;
/** Where the pinned edge is nowhere farther from the wanted one than a tape tells, one line is enough. */
const TAPE = 1;

const closed = (points: readonly Point[]): Point[] => [...points, ...points.slice(0, 1)];

const apart = (a: readonly Point[], b: readonly Point[]): number =>
  a.length === b.length
    ? Math.max(...a.map((p, k) => Math.hypot(p.x - b[k]!.x, p.y - b[k]!.y)))
    : Number.POSITIVE_INFINITY;

const fromPlan = ({ outlines, pins, name }: PiecePlan, mirrored: boolean): FullSizePiece => ({
  name,
  mirrored,
  lines: [
    { what: 'wanted', points: closed(outlines.wanted) },
    ...(apart(outlines.wanted, outlines.pinned) > TAPE
      ? [{ what: 'pinned', points: closed(outlines.pinned) } as const]
      : []),
  ],
  pins: pins.map((pin) => ({ pin, at: { x: pin.xMm, y: pin.yMm } })),
});

const fromOutline = ({ name, path, copies }: OutlinePiece): FullSizePiece => ({
  name,
  mirrored: copies === 2,
  lines: [{ what: 'wanted', points: closed(flattenPath(path, CHORD)) }],
  pins: [],
});

/** Every piece that has a size: as planned, pins and all, or without a plan its outline alone. */
export const fullSizePieces = ({ plan, asPinned }: PaperInput): FullSizePiece[] =>
  asPinned.map((outline) => {
    const planned = plan?.pieces.find(({ name }) => name === outline.name);
    return planned === undefined
      ? fromOutline(outline)
      : fromPlan(planned, outline.copies === 2 && !outline.symmetric);
  });
