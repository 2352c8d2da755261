import type { HalfEdges } from './half-edges.ts';

/**
 * Radius of the largest circle around a triangle, as a share of the wanted edge: points that are all
 * at least r apart and leave no circle larger than r have edges of 1.3 r on average (measured on
 * uniform meshes of this refiner; the test of mean edges guards it).
 */
const RADIUS_OF_SIZE = 0.77;

/** Margin on squared sines, so that an angle measured by other arithmetic still keeps the bound. */
const ANGLE_MARGIN = 1 + 1e-9;

/** New corners aim this much above the bound, so that they need no second round. */
const AIM = 1.05;

/**
 * Measures of one triangle at a time, kept in fields: this runs for every triangle ever made, and
 * makes no objects.
 */
export class TriangleShape {
  /** The triangle of the last measure; its nodes turn p, q, apex, and p–q is the shortest edge. */
  triangle = 0;
  p = 0;
  q = 0;
  apex = 0;
  /** Squared radius of its circle over that of the largest allowed; above 1 it is too large. */
  excess = 0;
  /** Squared sine of its smallest angle over that of the bound; below 1 it is too thin. */
  thinness = 0;
  centreX = 0;
  centreY = 0;
  private readonly mesh: HalfEdges;
  private readonly sizes: readonly number[];
  /** Squared sine of the smallest angle. */
  private readonly sine2: number;
  /** Distance of an off-centre from its short edge, as a share of that edge. */
  private readonly offCentre: number;

  /** `sizes`: wanted edge length at each node, mm; `minAngle` in degrees. */
  constructor(mesh: HalfEdges, sizes: readonly number[], minAngle: number) {
    this.mesh = mesh;
    this.sizes = sizes;
    this.sine2 = Math.sin((minAngle * Math.PI) / 180) ** 2 * ANGLE_MARGIN;
    this.offCentre = minAngle > 0 ? 0.5 / Math.tan((minAngle * AIM * Math.PI) / 360) : Infinity;
  }

  measure(t: number): void {
    const { x, y, tail } = this.mesh;
    const [a, b, c] = [tail[3 * t]!, tail[3 * t + 1]!, tail[3 * t + 2]!];
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!];
    const ab = ux * ux + uy * uy;
    const ac = vx * vx + vy * vy;
    const bc = (vx - ux) * (vx - ux) + (vy - uy) * (vy - uy);
    const cross2 = (ux * vy - uy * vx) ** 2;
    const shortest = Math.min(ab, bc, ac);
    this.triangle = t;
    if (ab === shortest) this.turn(a, b, c);
    else if (bc === shortest) this.turn(b, c, a);
    else this.turn(c, a, b);
    const product = ab * bc * ac;
    this.thinness = (cross2 * shortest) / (product * this.sine2);
    const largest = (RADIUS_OF_SIZE * (this.sizes[a]! + this.sizes[b]! + this.sizes[c]!)) / 3;
    this.excess = product / (4 * cross2 * largest * largest);
  }

  private turn(p: number, q: number, apex: number): void {
    this.p = p;
    this.q = q;
    this.apex = apex;
  }

  /**
   * The place for a node that mends the triangle measured last: its circumcentre or, where it is
   * thin but not too large, the off-centre if that is nearer to its shortest edge.
   */
  findCentre(): void {
    const { x, y } = this.mesh;
    const { p, q, apex } = this;
    const [ux, uy, vx, vy] = [x[q]! - x[p]!, y[q]! - y[p]!, x[apex]! - x[p]!, y[apex]! - y[p]!];
    const uu = ux * ux + uy * uy;
    const vv = vx * vx + vy * vy;
    const cross = 2 * (ux * vy - uy * vx);
    let dx = (vy * uu - uy * vv) / cross;
    let dy = (ux * vv - vx * uu) / cross;
    const height = (dy * ux - dx * uy) / uu;
    if (this.excess <= 1 && height > this.offCentre) {
      dx = 0.5 * ux - this.offCentre * uy;
      dy = 0.5 * uy + this.offCentre * ux;
    }
    this.centreX = x[p]! + dx;
    this.centreY = y[p]! + dy;
  }
}
