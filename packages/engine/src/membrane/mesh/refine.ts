import type { Divided } from './divide.ts';
import { type HalfEdges, NONE, prev } from './half-edges.ts';
import type { SizeField } from './mesh.ts';
import { shellShare, smallCorners, spansCorner } from './small-angles.ts';
import { TriangleShape } from './triangle-shape.ts';
import { type Found, walkTo } from './walk.ts';
import { WorkList } from './work-list.ts';

/** A segment may be this much longer than its size: it was divided to within a quarter. */
const SEGMENT_SLACK = 1.5;

export interface Refined {
  readonly converged: boolean;
}

/**
 * Ruppert's refinement (1995, J. Algorithms 18, 548) with off-centres (Üngör 2004, LATIN, 152) and
 * circular shells at small corners (Shewchuk 2002, Comput. Geom. 22, 21). Segments with a node in
 * their diametral circle are split; the circumcentres of triangles that are too large or too thin
 * become nodes, unless they would be in such a circle: then that segment is split.
 */
export const refine = (
  mesh: HalfEdges,
  given: Divided,
  size: SizeField,
  minAngle: number,
  maxPoints: number,
): Refined => {
  const refiner = new Refiner(mesh, given, size, minAngle, maxPoints);
  refiner.run();
  return { converged: refiner.whole && given.complete };
};

class Refiner {
  whole = true;
  private readonly mesh: HalfEdges;
  private readonly given: Divided;
  private readonly size: SizeField;
  private readonly maxPoints: number;
  private readonly sizes: number[] = [];
  private readonly shape: TriangleShape;
  /** Piece that a node lies within, −1 for corners and free nodes. */
  private readonly pieceOf: number[] = [];
  private readonly corners: Uint8Array;
  private readonly list = new WorkList();
  /** Half-edges of segments to split, each with the stamp of its triangle. */
  private readonly encroached: number[] = [];
  private readonly found: Found = { triangle: NONE, blocked: NONE };

  constructor(
    mesh: HalfEdges,
    given: Divided,
    size: SizeField,
    minAngle: number,
    maxPoints: number,
  ) {
    this.mesh = mesh;
    this.given = given;
    this.size = size;
    this.maxPoints = maxPoints;
    this.shape = new TriangleShape(mesh, this.sizes, minAngle);
    this.corners = smallCorners(given);
    const firstNew = mesh.nodes - given.pieceOfNew.length;
    for (let n = 0; n < mesh.nodes; n++) {
      this.sizes.push(size(mesh.x[n]!, mesh.y[n]!));
      this.pieceOf.push(n < firstNew ? NONE : given.pieceOfNew[n - firstNew]!);
    }
  }

  run(): void {
    for (let t = 0; t < this.mesh.triangles; t++) this.inspect(t);
    for (;;) {
      if (this.splitNext()) continue;
      const t = this.list.pop(this.mesh.born);
      if (t < 0) return;
      if (this.mesh.nodes >= this.maxPoints) {
        this.whole = false;
        return;
      }
      this.mend(t);
    }
  }

  /** Splits one encroached segment; false when none is left or the limit is reached. */
  private splitNext(): boolean {
    const { encroached, mesh } = this;
    while (encroached.length > 0) {
      const stamp = encroached.pop()!;
      const e = encroached.pop()!;
      if (mesh.born[(e / 3) | 0] !== stamp || mesh.segment[e] === NONE) continue;
      if (mesh.nodes >= this.maxPoints) {
        this.whole = false;
        return false;
      }
      this.split(e);
      return true;
    }
    return false;
  }

  /** Splits segment e in the middle, or on a shell around a small corner at one end. */
  private split(e: number): boolean {
    const { mesh } = this;
    const piece = mesh.segment[e]!;
    const [a, b] = this.fromCorner(mesh.tail[e]!, mesh.head(e));
    const [dx, dy] = [mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!];
    const shell = this.corners[a] && !this.corners[b];
    const share = shell ? shellShare(Math.hypot(dx, dy)) : 0.5;
    const node = mesh.splitSegment(e, mesh.x[a]! + share * dx, mesh.y[a]! + share * dy);
    if (node === NONE) {
      this.whole = false;
      return false;
    }
    this.welcome(node, piece);
    return true;
  }

  private fromCorner(a: number, b: number): readonly [number, number] {
    return this.corners[b] && !this.corners[a] ? [b, a] : [a, b];
  }

  private welcome(node: number, piece: number): void {
    this.sizes[node] = this.size(this.mesh.x[node]!, this.mesh.y[node]!);
    this.pieceOf[node] = piece;
    for (const t of this.mesh.fan) this.inspect(t);
  }

  /** Lists what is wrong with triangle t: segments that it encroaches on, and itself. */
  private inspect(t: number): void {
    const { mesh } = this;
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      if (mesh.segment[e] === NONE) continue;
      const apex = mesh.tail[prev(e)]!;
      if (this.encroaches(e, mesh.x[apex]!, mesh.y[apex]!)) this.encroached.push(e, mesh.born[t]!);
    }
    const bucket = this.bucketOf(t);
    if (bucket >= 0) this.list.push(bucket, t, mesh.born[t]!);
  }

  /** The place lies inside the circle that has segment e as its diameter. */
  private encroaches(e: number, x: number, y: number): boolean {
    const { mesh } = this;
    const [a, b] = [mesh.tail[e]!, mesh.head(e)];
    return (mesh.x[a]! - x) * (mesh.x[b]! - x) + (mesh.y[a]! - y) * (mesh.y[b]! - y) < 0;
  }

  /** −1 for a triangle that is well; 16 to 47 for too large, 0 to 15 for too thin, worst highest. */
  private bucketOf(t: number): number {
    const { shape } = this;
    shape.measure(t);
    if (shape.excess > 1) return 16 + Math.min(31, Math.floor(2 * Math.log2(shape.excess)));
    if (shape.thinness >= 1 || this.excused()) return -1;
    return Math.min(15, Math.floor((1 - shape.thinness) * 16));
  }

  /** The triangle measured last is thin because a small corner of the outline makes it so. */
  private excused(): boolean {
    const { mesh, given, pieceOf } = this;
    const { p, q, apex } = this.shape;
    return (
      (this.corners[apex] === 1 && this.joined(apex, p) && this.joined(apex, q)) ||
      spansCorner(mesh, given, pieceOf[p]!, pieceOf[q]!, p, q)
    );
  }

  /** Nodes of the triangle measured last are the ends of a segment. */
  private joined(p: number, q: number): boolean {
    const { mesh } = this;
    const t = this.shape.triangle;
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      const ends = [mesh.tail[e]!, mesh.head(e)];
      if (ends.includes(p) && ends.includes(q)) return mesh.segment[e] !== NONE;
    }
    return false;
  }

  /** Puts a node where it mends triangle t, or splits the segment that is in the way. */
  private mend(t: number): void {
    const { mesh, found, shape } = this;
    shape.measure(t);
    const tooThin = shape.thinness < 1 && !this.excused();
    shape.findCentre();
    const { centreX: x, centreY: y } = shape;
    if (Number.isFinite(x + y)) walkTo(mesh, t, x, y, found);
    else found.triangle = found.blocked = NONE;
    if (found.triangle === NONE && found.blocked === NONE) {
      this.whole = false;
      return;
    }
    let blocked = found.blocked;
    if (blocked === NONE)
      blocked = this.firstEncroached(mesh.openCavity(found.triangle, x, y, NONE), x, y);
    if (blocked === NONE) this.welcome(mesh.insertInCavity(x, y), NONE);
    else if ((tooThin || this.isLong(blocked)) && this.split(blocked)) this.again(t);
  }

  /** Lists t once more if the split has left it as it was. */
  private again(t: number): void {
    if (!this.mesh.fan.includes(t)) this.inspect(t);
  }

  private firstEncroached(rim: readonly number[], x: number, y: number): number {
    for (const e of rim) if (this.mesh.segment[e] !== NONE && this.encroaches(e, x, y)) return e;
    return NONE;
  }

  private isLong(e: number): boolean {
    const { mesh, sizes } = this;
    const [a, b] = [mesh.tail[e]!, mesh.head(e)];
    const length = Math.hypot(mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!);
    return length > (SEGMENT_SLACK * (sizes[a]! + sizes[b]!)) / 2;
  }
}
