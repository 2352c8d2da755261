import type { Divided } from './divide.ts';
import { type HalfEdges, NONE, prev } from './half-edges.ts';
import type { SizeField } from './mesh.ts';
import { shellShare, smallCorners, spansCorner } from './small-angles.ts';
import { type Found, walkTo } from './walk.ts';
import { WorkList } from './work-list.ts';

/**
 * Radius of the largest circle around a triangle, as a share of the wanted edge: points that are all
 * at least r apart and leave no circle larger than r have edges of 1.3 r on average (measured on
 * uniform meshes of this refiner; the test of mean edges guards it).
 */
const RADIUS_OF_SIZE = 0.77;

/** A segment may be this much longer than its size: it was divided to within a quarter. */
const SEGMENT_SLACK = 1.5;

/** Margin on squared sines, so that an angle measured by other arithmetic still keeps the bound. */
const ANGLE_MARGIN = 1 + 1e-9;

/** New corners aim this much above the bound, so that they need no second round. */
const AIM = 1.05;

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
  /** Squared sine of the smallest angle. */
  private readonly sine2: number;
  /** Distance of an off-centre from its short edge, as a share of that edge. */
  private readonly offCentre: number;
  private readonly sizes: number[] = [];
  /** Piece that a node lies within, −1 for corners and free nodes. */
  private readonly pieceOf: number[] = [];
  private readonly corners: Uint8Array;
  private readonly list = new WorkList();
  /** Half-edges of segments to split, each with the stamp of its triangle. */
  private readonly encroached: number[] = [];
  private readonly found: Found = { triangle: NONE, blocked: NONE };
  private centreX = 0;
  private centreY = 0;

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
    this.sine2 = Math.sin((minAngle * Math.PI) / 180) ** 2 * ANGLE_MARGIN;
    this.offCentre = minAngle > 0 ? 0.5 / Math.tan((minAngle * AIM * Math.PI) / 360) : Infinity;
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
    const excess = this.measure(t);
    if (excess > 1) return 16 + Math.min(31, Math.floor(2 * Math.log2(excess)));
    if (this.thinness >= 1 || this.excused()) return -1;
    return Math.min(15, Math.floor((1 - this.thinness) * 16));
  }

  /** The triangle of the last measure and its nodes, counter-clockwise. */
  private measured = 0;
  private a = 0;
  private b = 0;
  private c = 0;
  /** Squares of edges, opposite a, b and c. */
  private aa = 0;
  private bb = 0;
  private cc = 0;
  /** Squared sine of the smallest angle over that of the bound. */
  private thinness = 0;

  /** Squared radius of triangle t over that of the largest allowed; sets the fields above. */
  private measure(t: number): number {
    const { x, y, tail } = this.mesh;
    const [a, b, c] = [tail[3 * t]!, tail[3 * t + 1]!, tail[3 * t + 2]!];
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
    const cc = ux * ux + uy * uy;
    const bb = vx * vx + vy * vy;
    const aa = (vx - ux) * (vx - ux) + (vy - uy) * (vy - uy);
    const cross = ux * vy - uy * vx;
    const cross2 = cross * cross;
    this.measured = t;
    this.a = a;
    this.b = b;
    this.c = c;
    this.aa = aa;
    this.bb = bb;
    this.cc = cc;
    const shortest = Math.min(aa, bb, cc);
    this.thinness = (cross2 * shortest) / (aa * bb * cc * this.sine2);
    const largest = (RADIUS_OF_SIZE * (this.sizes[a]! + this.sizes[b]! + this.sizes[c]!)) / 3;
    return (aa * bb * cc) / (4 * cross2 * largest * largest);
  }

  /** The triangle measured last is thin because a small corner of the outline makes it so. */
  private excused(): boolean {
    const { a, b, c, aa, bb, cc } = this;
    if (aa <= bb && aa <= cc) return this.excusedAt(a, b, c);
    return bb <= cc ? this.excusedAt(b, c, a) : this.excusedAt(c, a, b);
  }

  /** The smallest angle is at `apex`, opposite the shortest edge p–q. */
  private excusedAt(apex: number, p: number, q: number): boolean {
    const { mesh, given, pieceOf } = this;
    return (
      (this.corners[apex] === 1 && this.joined(apex, p) && this.joined(apex, q)) ||
      spansCorner(mesh, given, pieceOf[p]!, pieceOf[q]!, p, q)
    );
  }

  /** Nodes of the triangle measured last are the ends of a segment. */
  private joined(p: number, q: number): boolean {
    const { mesh } = this;
    const t = this.measured;
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      const ends = [mesh.tail[e]!, mesh.head(e)];
      if (ends.includes(p) && ends.includes(q)) return mesh.segment[e] !== NONE;
    }
    return false;
  }

  /** Puts a node where it mends triangle t, or splits the segment that is in the way. */
  private mend(t: number): void {
    const { mesh, found } = this;
    const tooLarge = this.measure(t) > 1;
    const tooThin = this.thinness < 1 && !this.excused();
    this.findCentre(!tooLarge);
    walkTo(mesh, t, this.centreX, this.centreY, found);
    if (found.triangle === NONE && found.blocked === NONE) {
      this.whole = false;
      return;
    }
    let blocked = found.blocked;
    if (blocked === NONE) {
      const rim = mesh.openCavity(found.triangle, this.centreX, this.centreY, NONE);
      blocked = this.firstEncroached(rim);
    }
    if (blocked === NONE) this.insertCentre();
    else if ((tooThin || this.isLong(blocked)) && this.split(blocked)) this.again(t);
  }

  private insertCentre(): void {
    const node = this.mesh.insertInCavity(this.centreX, this.centreY);
    this.welcome(node, NONE);
  }

  /** Lists t once more if the split has left it as it was. */
  private again(t: number): void {
    if (!this.mesh.fan.includes(t)) this.inspect(t);
  }

  private firstEncroached(rim: readonly number[]): number {
    for (const e of rim)
      if (this.mesh.segment[e] !== NONE && this.encroaches(e, this.centreX, this.centreY)) return e;
    return NONE;
  }

  private isLong(e: number): boolean {
    const { mesh, sizes } = this;
    const [a, b] = [mesh.tail[e]!, mesh.head(e)];
    const length = Math.hypot(mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!);
    return length > (SEGMENT_SLACK * (sizes[a]! + sizes[b]!)) / 2;
  }

  /** Circumcentre of the triangle measured last, or the nearer off-centre of its shortest edge. */
  private findCentre(mayBeOff: boolean): void {
    const { a, b, c, aa, bb, cc } = this;
    if (aa <= bb && aa <= cc) this.centreOver(b, c, a, mayBeOff);
    else if (bb <= cc) this.centreOver(c, a, b, mayBeOff);
    else this.centreOver(a, b, c, mayBeOff);
  }

  /** p–q is the shortest edge, the triangle p, q, r counter-clockwise. */
  private centreOver(p: number, q: number, r: number, mayBeOff: boolean): void {
    const { x, y } = this.mesh;
    const [ux, uy, vx, vy] = [x[q]! - x[p]!, y[q]! - y[p]!, x[r]! - x[p]!, y[r]! - y[p]!];
    const uu = ux * ux + uy * uy;
    const vv = vx * vx + vy * vy;
    const cross = 2 * (ux * vy - uy * vx);
    let dx = (vy * uu - uy * vv) / cross;
    let dy = (ux * vv - vx * uu) / cross;
    const height = (dy * ux - dx * uy) / uu;
    if (mayBeOff && height > this.offCentre) {
      dx = 0.5 * ux - this.offCentre * uy;
      dy = 0.5 * uy + this.offCentre * ux;
    }
    this.centreX = x[p]! + dx;
    this.centreY = y[p]! + dy;
  }
}
