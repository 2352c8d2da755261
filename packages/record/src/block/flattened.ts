import type { OutlinePiece, Point, EdgeKind as SewnEdge } from '@dryflat/engine/garment';

type Segment = OutlinePiece['path'][number];

/**
 * Chords of a curve: a quarter turn of an armhole, 200 mm across, strays from 12 of them by less than
 * a millimetre (r(1 − cos(π/48)) = 0.4 mm).
 */
const CHORDS = 12;

const at = (s: Segment, t: number): Point => {
  if (s.kind === 'line')
    return { x: s.from.x + t * (s.to.x - s.from.x), y: s.from.y + t * (s.to.y - s.from.y) };
  const u = 1 - t;
  const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return {
    x: a * s.from.x + b * s.c1.x + c * s.c2.x + d * s.to.x,
    y: a * s.from.y + b * s.c1.y + c * s.c2.y + d * s.to.y,
  };
};

export interface Flattened {
  readonly points: readonly Point[];
  /** Edge from point i to the next. */
  readonly edges: readonly SewnEdge[];
}

/** The outline as a polygon, a curve always in as many chords, so that two sizes of one piece match point by point. */
export const flattened = ({ path }: OutlinePiece): Flattened => {
  const chords = path.flatMap((s) =>
    Array.from({ length: s.kind === 'line' ? 1 : CHORDS }, (_, i) => ({
      point: at(s, i / CHORDS),
      edge: s.edge,
    })),
  );
  return { points: chords.map(({ point }) => point), edges: chords.map(({ edge }) => edge) };
};

/** True where two sizes of a piece are drawn by the same segments, so that their points match. */
export const alike = (a: OutlinePiece, b: OutlinePiece): boolean =>
  a.path.length === b.path.length &&
  a.path.every(({ kind, edge }, i) => kind === b.path[i]?.kind && edge === b.path[i]?.edge);
