import { layersOf, pieceStitches, shareKnit } from '../../garment/counts/index.ts';
import {
  type EdgeKind,
  type GarmentKind,
  type OutlinePiece,
  outlineOf,
  outlineSizes,
  type PartName,
  pathLength,
} from '../../garment/index.ts';
import { mm } from '../../units/index.ts';
import type { RowMark } from '../types.ts';
import type { Luck, Make } from './luck.ts';

/** A piece with all its copies, as it is knit at this gauge. */
export interface KnitPiece {
  readonly name: string;
  readonly part: PartName;
  readonly copies: 1 | 2;
  readonly stitches: number;
  readonly castOn: number;
  readonly bindOff: number;
  /** Edges that are sewn, mm; a seam has two. */
  readonly seamEdgesMm: number;
  /** How far from the cast-on each mark is drawn, mm. */
  readonly marks: Readonly<Partial<Record<RowMark, number>>>;
  /** Share of a copy's stitches within so many mm of its cast-on, 0 to 1. */
  shareTo(mm: number): number;
}

/** Edges of some kinds along all copies and layers, mm. */
const edgeMm = (piece: OutlinePiece, kinds: readonly EdgeKind[]): number =>
  pathLength(
    piece.path.filter(({ edge }) => kinds.includes(edge)),
    0.5,
  ) *
  piece.copies *
  layersOf(piece);

/** Where shaping to the end begins, as a share of that length, and of the width of a foot: as they are drawn. */
const CROWN = 0.58;
const TIP = 0.55;
const TOE = 0.5;

/** Marks by the lengths that are drawn; halves are drawn to the height of the whole, which has them. */
const marksOf = (part: PartName, lengthOf: (landmark: string) => number): KnitPiece['marks'] => {
  const rib = lengthOf('rib-depth');
  const ribbing = rib > 0 ? { ribbing: rib } : {};
  if (part === 'sleeve') return { ...ribbing, underarm: lengthOf('sleeve-length') };
  const [under, crown, leg, hand] = [
    lengthOf('underarm-length'),
    lengthOf('hat-height'),
    lengthOf('leg-length'),
    lengthOf('hand-length'),
  ];
  if (under > 0) return { ...ribbing, underarm: under, end: lengthOf('body-length') };
  if (crown > 0) return { ...ribbing, crown: CROWN * crown, end: crown };
  if (leg > 0) {
    const end = leg + lengthOf('foot-length');
    return { ...ribbing, heel: leg, toe: end - TOE * lengthOf('foot'), end };
  }
  if (hand > 0) return { ...ribbing, tip: rib + TIP * hand, end: rib + hand };
  return { end: Math.max(lengthOf('length'), lengthOf('depth')) };
};

const knitPiece = (piece: OutlinePiece, luck: Luck, marks: KnitPiece['marks']): KnitPiece => {
  const [stitch, row] = [luck.pitch.width.median, luck.pitch.length.median];
  const one = pieceStitches(piece, { stitch: mm(stitch), row: mm(row), state: 'asKnit' });
  return {
    name: piece.name,
    part: partOfPiece(piece),
    copies: piece.copies,
    stitches: one * piece.copies,
    castOn: edgeMm(piece, ['cast-on']) / stitch,
    bindOff: edgeMm(piece, ['bound-off', 'neckline']) / stitch,
    seamEdgesMm: edgeMm(piece, ['seam']),
    marks,
    shareTo: shareKnit(piece),
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
  const dimensions = pieces.flatMap((each) => each.dimensions);
  const lengthOf = (landmark: string): number => {
    const at = dimensions.find((each) => each.landmark === landmark);
    return at === undefined ? 0 : Math.hypot(at.to.x - at.from.x, at.to.y - at.from.y);
  };
  const marks = {
    body: marksOf('body', lengthOf),
    sleeve: marksOf('sleeve', lengthOf),
  };
  return pieces.map((piece) => knitPiece(piece, luck, marks[partOfPiece(piece)]));
};
