import { flattenPath, type OutlinePiece, type Point } from '../outline/index.ts';
import { areaOf } from './piece-stitches.ts';

/** The part of a polygon at or below a level line; y runs down. */
const below = (corners: readonly Point[], y: number): Point[] =>
  corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    const inside = p.y >= y ? [p] : [];
    if (p.y >= y === q.y >= y) return inside;
    const share = (y - p.y) / (q.y - p.y);
    return [...inside, { x: p.x + share * (q.x - p.x), y }];
  });

const within01 = (share: number): number => Math.min(1, Math.max(0, share));

const drawn = (piece: OutlinePiece, landmark: string): number => {
  const at = piece.dimensions.find((each) => each.landmark === landmark);
  return at === undefined ? 0 : Math.hypot(at.to.x - at.from.x, at.to.y - at.from.y);
};

/** A sock is knit down its leg, then along its foot; the rows of the foot are taken as alike. */
const ofSock = (piece: OutlinePiece, corners: readonly Point[], mm: number): number => {
  const [leg, foot] = [drawn(piece, 'leg-length'), drawn(piece, 'foot-length')];
  const ofLeg = 1 - areaOf(below(corners, leg)) / areaOf(corners);
  if (mm <= leg) return 1 - areaOf(below(corners, mm)) / areaOf(corners);
  return ofLeg + (1 - ofLeg) * within01((mm - leg) / foot);
};

/** A shawl from the middle of its top edge outwards: each row is like the whole, only smaller. */
const isOutwards = ({ name, path }: OutlinePiece): boolean =>
  name === 'shawl' && path.every(({ edge }) => edge !== 'cast-on');

/**
 * Share of a piece's stitches within so many mm of its cast-on, in the order of knitting: 0 at the cast-on, 1
 * at its end and beyond, and never falling between. Each copy by itself.
 */
export const shareKnit = (piece: OutlinePiece): ((mm: number) => number) => {
  const corners = flattenPath(piece.path, 0.05);
  const ys = corners.map(({ y }) => y);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  if (piece.name === 'sock') return (mm) => within01(ofSock(piece, corners, mm));
  if (isOutwards(piece)) return (mm) => within01(mm / (bottom - top)) ** 2;
  const all = areaOf(corners);
  return (mm) => (mm <= 0 ? 0 : within01(areaOf(below(corners, bottom - mm)) / all));
};
