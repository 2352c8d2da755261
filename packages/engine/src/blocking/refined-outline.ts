import type { Point } from '../garment/index.ts';
import { between, crossesAt, distance, inside, middleOf, nearestOn, plus, turn } from './plane.ts';
import { axisOf, mirrored } from './symmetry.ts';
import type { EdgeKind, PieceToBlock } from './types.ts';
import { placeOf, wantedOf } from './wanted-outline.ts';

/** Why a point of the outline is a likely place for a pin. */
export type PointRole = 'asked' | 'corner' | 'dimension' | 'plain';

/** How the knitter may pin an edge: in both directions, in length only, or not at all. */
export type Pinning = 'free' | 'length' | 'none';

export interface OutlinePoint {
  readonly rest: Point;
  readonly wanted: Point;
  readonly role: PointRole;
  /** Index of the edge of the piece's own outline that leaves here. */
  readonly own: number;
  readonly kind: EdgeKind;
  /** How the edge that leaves here may be pinned. */
  readonly pinning: Pinning;
}

/** Turning by more than this is a corner, degrees; the chords of a curve turn by less. */
const CORNER = 35;

const turnsBy = (a: Point, b: Point, c: Point): number => {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs((Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI);
};

const up = ({ x, y }: Point): Point => ({ x, y: -y });

interface Split {
  readonly share: number;
  readonly role: PointRole;
  readonly to?: Point;
  /** Something is in the mat here: others this close give way to it. */
  readonly firm?: true;
}

/** Places on the outline that must be points of it: where dimensions end, pins are asked for, and zones begin. */
const splitsOf = (piece: PieceToBlock, through: readonly number[]): Map<number, Split[]> => {
  const splits = new Map<number, Split[]>();
  const axis = axisOf(piece);
  const put = (at: Point, role: PointRole, within: number, to?: Point) => {
    const { edge, share, off } = nearestOn(piece.outline, at);
    if (off > within) return;
    const list = splits.get(edge) ?? [];
    list.push(to === undefined ? { share, role } : { share, role, to });
    splits.set(edge, list);
  };
  for (const on of through) {
    const edge = Math.floor(on) % piece.outline.length;
    const split: Split = { share: on - Math.floor(on), role: 'plain', firm: true };
    splits.set(edge, [...(splits.get(edge) ?? []), split]);
  }
  for (const { at, to } of piece.pinned ?? []) put(at, 'asked', Number.POSITIVE_INFINITY, to);
  for (const { from, to } of piece.dimensions)
    for (const end of [from, to]) {
      const at = placeOf(piece.outline, end);
      put(at, 'dimension', 1);
      if (axis !== null) put(mirrored(at, axis), 'dimension', 1);
    }
  piece.outline.forEach((a, edge) => {
    const b = piece.outline[(edge + 1) % piece.outline.length]!;
    for (const { polygon } of piece.zones)
      for (const share of crossesAt(a, b, polygon))
        splits.set(edge, [...(splits.get(edge) ?? []), { share, role: 'plain' }]);
  });
  return splits;
};

/** Splits closer than this to a point or to each other, as a share of the edge and in mm, are one. */
const CLOSE_MM = 6;

const near = (a: Split, b: Split, length: number): boolean =>
  Math.abs(a.share - b.share) * length < CLOSE_MM;

const pinningOf = (piece: PieceToBlock, a: Point, b: Point, kind: EdgeKind): Pinning => {
  const middle = between(a, b, 0.5);
  const centre = middleOf(piece.outline);
  // A hair inwards, as the zone may end on the edge itself.
  const probe = between(middle, centre, 1e-3);
  const zone = piece.zones.find(({ polygon }) => inside(polygon, probe) || inside(polygon, middle));
  if (zone === undefined) return kind === 'rib' ? 'none' : 'free';
  const across = Math.abs(b.x - a.x) > Math.abs(b.y - a.y);
  return zone.kind === 'rib' && across ? 'length' : 'none';
};

/** Ribbing keeps its width at rest: its wanted places move with the middle of its edge only. */
const ribKept = (points: OutlinePoint[]): OutlinePoint[] => {
  const touching = (i: number) =>
    points[i]!.pinning === 'length' || points.at(i - 1)!.pinning === 'length';
  const held = points.filter((_, i) => touching(i));
  if (held.length === 0) return points;
  const shift = middleOf(held.map((p) => p.wanted)).x - middleOf(held.map((p) => p.rest)).x;
  return points.map((p, i) =>
    touching(i) && p.role !== 'asked'
      ? { ...p, wanted: { x: p.rest.x + shift, y: p.wanted.y } }
      : p,
  );
};

/**
 * Pins pull and do not push: where the piece as a whole already lies wider or longer than wanted, it is
 * pinned as it lies, keeping the shape wanted, and what is too large is said.
 */
const notPushed = (rest: readonly Point[], wanted: readonly Point[]): readonly Point[] => {
  const factor = (of: (p: Point) => number): number => {
    const extent = (list: readonly Point[]) =>
      Math.max(...list.map(of)) - Math.min(...list.map(of));
    return Math.max(1, extent(rest) / extent(wanted));
  };
  const [fx, fy] = [factor(({ x }) => x), factor(({ y }) => y)];
  const middle = middleOf(wanted);
  return wanted.map(({ x, y }) => ({
    x: middle.x + fx * (x - middle.x),
    y: middle.y + fy * (y - middle.y),
  }));
};

/**
 * The outline with y up, counter-clockwise, with further points where dimensions end and pins are asked
 * for, and the place that each point is to go to. The wanted outline is laid so that its middle is
 * over that of the rest. `through`: places on the piece's outline that are points too, as far as they are
 * not right beside one.
 */
export const refinedOutline = (
  piece: PieceToBlock,
  through: readonly number[] = [],
): readonly OutlinePoint[] => {
  const wanted = wantedOf(piece);
  const n = piece.outline.length;
  const [a, b] = [middleOf(piece.outline), middleOf(wanted)];
  const moved = notPushed(
    piece.outline,
    wanted.map((p) => plus(p, a.x - b.x, a.y - b.y)),
  );
  const splits = splitsOf(piece, through);
  const isCorner = (i: number, list: readonly Point[]) =>
    turnsBy(list.at(i - 1)!, list[i]!, list[(i + 1) % n]!) > CORNER;
  const points = piece.outline.flatMap((rest, i): OutlinePoint[] => {
    const next = (i + 1) % n;
    const kind = piece.edges[i]!;
    const length = distance(rest, piece.outline[next]!);
    const own = splits.get(i) ?? [];
    const atEnd = (splits.get((i + n - 1) % n) ?? []).filter(
      ({ share }) => (1 - share) * distance(piece.outline.at(i - 1)!, rest) < CLOSE_MM,
    );
    const atStart = own.filter(({ share }) => share * length < CLOSE_MM);
    const here = [...atStart, ...atEnd].filter((split) => split.role !== 'plain');
    const asked = here.find(({ role }) => role === 'asked');
    const corner = isCorner(i, piece.outline) || isCorner(i, moved);
    const role = asked ? 'asked' : corner ? 'corner' : here.length > 0 ? 'dimension' : 'plain';
    const first = {
      rest: up(rest),
      wanted: up(asked?.to ? plus(asked.to, 0, 0) : moved[i]!),
      role,
    } as const;
    const within = own
      .filter(({ share }) => share * length >= CLOSE_MM && (1 - share) * length >= CLOSE_MM)
      .filter((s, _, all) => s.firm || !all.some((o) => o.firm && near(o, s, length)))
      .sort((p, q) => p.share - q.share)
      .filter((s, k, all) => k === 0 || !near(s, all[k - 1]!, length));
    const along = (share: number) => between(rest, piece.outline[next]!, share);
    const later = within.map(({ share, role: splitRole, to }) => ({
      share,
      rest: up(along(share)),
      wanted: up(to ?? between(moved[i]!, moved[next]!, share)),
      role: splitRole,
    }));
    return [{ share: 0, ...first }, ...later].map(({ share, ...point }, k) => ({
      ...point,
      own: i,
      kind,
      // Of the part up to the next point: a zone may begin between.
      pinning: pinningOf(piece, along(share), along(later[k]?.share ?? 1), kind),
    }));
  });
  return ribKept(turn(points.map((p) => p.rest)) > 0 ? points : turnedRound(points));
};

/** The same outline run the other way; what belongs to an edge moves to its other end. */
const turnedRound = (points: readonly OutlinePoint[]): OutlinePoint[] =>
  points.map((_, i) => {
    const point = points.at(-i)!;
    const { kind, pinning, own } = points.at(-i - 1)!;
    return { ...point, kind, pinning, own };
  });
