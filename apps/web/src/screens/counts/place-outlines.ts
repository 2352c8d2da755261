import {
  type Box,
  boxOf,
  flattenPath,
  joinBoxes,
  type OutlinePiece,
  type Point,
  pathToSvg,
} from '@dryflat/engine/garment';

/** An outline as lines to draw, where the others are too. */
export interface PlacedOutline {
  /** `d` of the edge, of one or two strokes. */
  readonly edge: string;
  /** `d` of the top of the ribbing; empty where there is none. */
  readonly ribbing: string;
  readonly box: Box;
}

/** A chord may be this far off its curve, mm: less than a line is wide. */
const TOLERANCE = 0.5;

type Turn = (p: Point) => Point;
const asItIs: Turn = (p) => p;
const flipped: Turn = ({ x, y }) => ({ x: -x, y });

/** A sleeve is drawn folded along x = 0, and knit as both halves. */
const isFolded = ({ name, path }: OutlinePiece): boolean =>
  name === 'sleeve' && path.some(({ edge }) => edge === 'fold');

const laidOpen = (outline: OutlinePiece) =>
  isFolded(outline)
    ? { path: fromFold(outline.path), turns: [asItIs, flipped] }
    : { path: outline.path, turns: [asItIs] };

/** The edge without its fold, beginning after it, so that it stays one stroke. */
const fromFold = (path: OutlinePiece['path']): OutlinePiece['path'] => {
  const at = path.findIndex(({ edge }) => edge === 'fold');
  return [...path.slice(at + 1), ...path.slice(0, at)].filter(({ edge }) => edge !== 'fold');
};

/** One of two halves, as of a cardigan's front: its left edge is the middle of the garment. */
const isHalf = (outline: OutlinePiece): boolean =>
  !outline.symmetric && !isFolded(outline) && outline.copies === 2 && outline.name === 'front';

/**
 * Outlines laid on each other for comparing: hems on one line, whole pieces by their middle, halves
 * by the edge at the left. With the box round all, millimetres.
 */
export const placeOutlines = (
  outlines: readonly OutlinePiece[],
): { readonly placed: readonly PlacedOutline[]; readonly box: Box } => {
  const halves = outlines.some(isHalf);
  const placed = outlines.map((outline): PlacedOutline => {
    const { path, turns } = laidOpen(outline);
    const corners = turns.flatMap((turn) => flattenPath(path, TOLERANCE).map(turn));
    const { left, top, right, bottom } = boxOf(corners);
    const shift = halves ? -left : -(left + right) / 2;
    const place: Turn = ({ x, y }) => ({ x: x + shift, y: y - bottom });
    const draw = (each: OutlinePiece['path']) =>
      turns.map((turn) => pathToSvg(each, (p) => place(turn(p)))).join(' ');
    const ribs = outline.details.filter(({ kind }) => kind === 'ribbing');
    return {
      edge: draw(path),
      ribbing: ribs.map((rib) => draw(rib.path)).join(' '),
      box: { left: left + shift, right: right + shift, top: top - bottom, bottom: 0 },
    };
  });
  return { placed, box: joinBoxes(placed.map(({ box }) => box)) };
};
