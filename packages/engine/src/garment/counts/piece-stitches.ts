import { flattenPath, type OutlinePiece, type PieceName, type Point } from '../outline/index.ts';
import type { Pitch } from './types.ts';

/** Pieces that are drawn folded or as a flattened tube: there is as much fabric behind. */
const DOUBLED: ReadonlySet<PieceName> = new Set(['sleeve', 'hat', 'sock', 'mitten']);

/** Layers of fabric that the drawing of a piece shows as one: 2 where it is folded or a tube. */
export const layersOf = (piece: Pick<OutlinePiece, 'name'>): 1 | 2 =>
  DOUBLED.has(piece.name) ? 2 : 1;

/** Area inside a closed polygon that does not cross itself, in square millimetres; either way round. */
export const areaOf = (corners: readonly Point[]): number =>
  Math.abs(
    corners.reduce((sum, p, i) => {
      const q = corners[(i + 1) % corners.length]!;
      return sum + (p.x * q.y - q.x * p.y) / 2;
    }, 0),
  );

/**
 * Stitches in one copy of a piece at a gauge: its area, both layers where it lies folded, over the
 * area of a stitch. Not a whole number. Edges cast on and bound off are not counted apart.
 */
export const pieceStitches = (piece: OutlinePiece, pitch: Pitch): number =>
  (areaOf(flattenPath(piece.path, 0.05)) * layersOf(piece)) / (pitch.stitch * pitch.row);
