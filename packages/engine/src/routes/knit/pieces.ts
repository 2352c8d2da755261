import { areaOf, layersOf, pieceStitches } from '../../garment/counts/index.ts';
import {
  type EdgeKind,
  flattenPath,
  type GarmentKind,
  type OutlinePiece,
  outlineOf,
  outlineSizes,
  type Point,
  pathLength,
} from '../../garment/index.ts';
import { mm } from '../../units/index.ts';
import type { Luck, Make } from './luck.ts';

/** Which part of a garment a piece belongs to. */
export type PartName = 'body' | 'sleeve';

/** A piece with all its copies, as it is knit at this gauge. */
export interface KnitPiece {
  readonly name: string;
  readonly part: PartName;
  readonly stitches: number;
  readonly castOn: number;
  readonly bindOff: number;
  /** Edges that are sewn, mm; a seam has two. */
  readonly seamEdgesMm: number;
  /** Share of its stitches below the underarm (its end, where it has none), and in its ribbing. */
  readonly belowUnderarm: number;
  readonly inRibbing: number;
}

const SLEEVE_LANDMARKS: ReadonlySet<string> = new Set(['upper-arm', 'cuff', 'sleeve-length']);

/** The part that a landmark is measured on. */
export const partOf = (landmark: string): PartName =>
  SLEEVE_LANDMARKS.has(landmark) ? 'sleeve' : 'body';

/** Edges of some kinds along all copies and layers, mm. */
const edgeMm = (piece: OutlinePiece, kinds: readonly EdgeKind[]): number =>
  pathLength(
    piece.path.filter(({ edge }) => kinds.includes(edge)),
    0.5,
  ) *
  piece.copies *
  layersOf(piece);

/** The part of a polygon at or below a level line; y runs down. */
const below = (corners: readonly Point[], y: number): Point[] =>
  corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    const inside = p.y >= y ? [p] : [];
    if (p.y >= y === q.y >= y) return inside;
    const share = (y - p.y) / (q.y - p.y);
    return [...inside, { x: p.x + share * (q.x - p.x), y }];
  });

const shareBelow = (piece: OutlinePiece, y: number | undefined): number | null => {
  if (y === undefined) return null;
  const corners = flattenPath(piece.path, 0.05);
  return areaOf(below(corners, y)) / areaOf(corners);
};

/** Length below the shaped end, for pieces that have no underarm: crowns, toes and tips. Assumption. */
const UNSHAPED: Readonly<Record<string, number>> = { hat: 0.7, sock: 0.8, mitten: 0.75 };

/** The top end of the length up to the underarm: of the body, or of the sleeve. */
const underarmY = ({ dimensions }: OutlinePiece): number | undefined => {
  const up = dimensions.find(
    ({ landmark }) => landmark === 'underarm-length' || landmark === 'sleeve-length',
  );
  return up === undefined ? undefined : Math.min(up.from.y, up.to.y);
};

const ribY = ({ details }: OutlinePiece): number | undefined =>
  details.find(({ kind }) => kind === 'ribbing')?.path[0]?.from.y;

const knitPiece = (piece: OutlinePiece, luck: Luck, underarm: number | undefined): KnitPiece => {
  const [stitch, row] = [luck.pitch.width.median, luck.pitch.length.median];
  const one = pieceStitches(piece, { stitch: mm(stitch), row: mm(row), state: 'asKnit' });
  return {
    name: piece.name,
    part: partOfPiece(piece),
    stitches: one * piece.copies,
    castOn: edgeMm(piece, ['cast-on']) / stitch,
    bindOff: edgeMm(piece, ['bound-off', 'neckline']) / stitch,
    seamEdgesMm: edgeMm(piece, ['seam']),
    belowUnderarm: shareBelow(piece, underarm) ?? UNSHAPED[piece.name] ?? 1,
    inRibbing: shareBelow(piece, ribY(piece)) ?? 0,
  };
};

const partOfPiece = ({ name }: Pick<OutlinePiece, 'name'>): PartName =>
  name === 'sleeve' ? 'sleeve' : 'body';

/** The pieces of the garment as a route makes them, from medians as knit. */
export const knitPieces = (
  kind: GarmentKind,
  luck: Luck,
  makes: readonly Make[],
): readonly KnitPiece[] => {
  const sizes = luck.known.model.measurements.map(({ wanted }, at) => ({
    landmark: wanted.landmark,
    span: wanted.span,
    mm: luck.median[makes[at]!.from][at]! * makes[at]!.factor,
  }));
  const { pieces } = outlineOf(kind, outlineSizes(sizes));
  /** Halves are drawn to the height of the whole, which has the dimension. */
  const underarm = (part: PartName): number | undefined =>
    pieces
      .filter((each) => partOfPiece(each) === part)
      .map(underarmY)
      .find((y) => y !== undefined);
  return pieces.map((piece) => knitPiece(piece, luck, underarm(partOfPiece(piece))));
};
