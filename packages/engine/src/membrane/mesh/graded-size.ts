import type { SizeField, Xy } from './mesh.ts';

export interface GradedSize {
  /** Polylines along which edges are fine; a ring repeats its first point. mm. */
  readonly edges: readonly (readonly Xy[])[];
  /** Points at which edges are fine. mm. */
  readonly pins: readonly Xy[];
  /** Edge length far away, mm. */
  readonly coarse: number;
  /** Edge length at edges and pins, mm; from above 0 to `coarse`. */
  readonly fine: number | { readonly edges: number; readonly pins: number };
  /** Growth of the size per mm of distance, above 0; 0.2 to 0.4 keeps neighbours alike. */
  readonly grade: number;
}

/**
 * The size field min(coarse, fine + grade × distance to the nearest edge or pin). Features are kept
 * in square cells by reach, so that a sample looks only at those that can matter there. Numbers
 * outside their ranges throw: they are a bug of the caller.
 */
export const gradedSize = (g: GradedSize): SizeField => {
  const fine = typeof g.fine === 'number' ? { edges: g.fine, pins: g.fine } : g.fine;
  for (const f of [fine.edges, fine.pins])
    if (!(f > 0 && f <= g.coarse && g.grade > 0 && g.grade < Infinity))
      throw new RangeError(`no size field: fine ${f}, coarse ${g.coarse}, grade ${g.grade}`);
  const features = [
    ...g.edges.flatMap((line) => line.slice(1).map((b, i) => feature(line[i]!, b, fine.edges))),
    ...g.pins.map((p) => feature(p, p, fine.pins)),
  ];
  const cells = new Cells(features, g.coarse, g.grade);
  return (x, y) => {
    let size = g.coarse;
    for (const f of cells.at(x, y)) {
      const room = (size - f.fine) / g.grade;
      if (room <= 0) continue;
      const square = squareDistance(f, x, y);
      if (square < room * room) size = f.fine + g.grade * Math.sqrt(square);
    }
    return size;
  };
};

/** A straight stretch, or a point when it has no length. */
interface Feature {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  /** 1 / length², 0 for a point and for what is too short to square. */
  readonly perSquare: number;
  readonly fine: number;
}

const feature = (a: Xy, b: Xy, fine: number): Feature => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  return {
    x: a[0],
    y: a[1],
    dx,
    dy,
    perSquare: Number.isFinite(1 / square) ? 1 / square : 0,
    fine,
  };
};

const squareDistance = (f: Feature, x: number, y: number): number => {
  const [px, py] = [x - f.x, y - f.y];
  const share = Math.min(1, Math.max(0, (px * f.dx + py * f.dy) * f.perSquare));
  const [ex, ey] = [px - share * f.dx, py - share * f.dy];
  return ex * ex + ey * ey;
};

/** Cells per side of the box around all features: coarse enough to fill in about a millisecond. */
const SIDE = 24;

class Cells {
  private readonly left: number;
  private readonly bottom: number;
  private readonly cell: number;
  private readonly lists = new Map<number, readonly Feature[]>();
  private readonly features: readonly Feature[];
  private readonly coarse: number;
  private readonly grade: number;

  constructor(features: readonly Feature[], coarse: number, grade: number) {
    this.features = features;
    this.coarse = coarse;
    this.grade = grade;
    const xs = features.flatMap((f) => [f.x, f.x + f.dx]);
    const ys = features.flatMap((f) => [f.y, f.y + f.dy]);
    this.left = least(xs);
    this.bottom = least(ys);
    const extent = Math.max(
      -least(xs.map((v) => -v)) - this.left,
      -least(ys.map((v) => -v)) - this.bottom,
    );
    this.cell = extent > 0 ? extent / SIDE : coarse;
  }

  /** Features that can make the size less than coarse somewhere in the cell of the place. */
  at(x: number, y: number): readonly Feature[] {
    const i = Math.floor((x - this.left) / this.cell);
    const j = Math.floor((y - this.bottom) / this.cell);
    // Places away from all features share the list that is always right.
    if (!(i >= 0 && i <= SIDE && j >= 0 && j <= SIDE)) return this.features;
    const key = i + j * (SIDE + 1);
    const known = this.lists.get(key);
    if (known) return known;
    const list = this.near(this.left + (i + 0.5) * this.cell, this.bottom + (j + 0.5) * this.cell);
    this.lists.set(key, list);
    return list;
  }

  /**
   * By distance from the middle of the cell, which is at most 0.71 cells from any place in it: a
   * feature also drops out where another is finer everywhere in the cell.
   */
  private near(x: number, y: number): readonly Feature[] {
    const half = Math.SQRT1_2 * this.cell;
    const sizes = this.features.map(
      (f) => f.fine + this.grade * Math.sqrt(squareDistance(f, x, y)),
    );
    const most = Math.min(this.coarse, least(sizes) + this.grade * half);
    // The rounding of a corner of the cell is far below this share of it.
    const reach = this.grade * half * (1 + 1e-9);
    return this.features.filter((_, k) => sizes[k]! - reach <= most);
  }
}

const least = (values: readonly number[]): number => {
  let smallest = Number.POSITIVE_INFINITY;
  for (const v of values) if (v < smallest) smallest = v;
  return smallest === Number.POSITIVE_INFINITY ? 0 : smallest;
};
