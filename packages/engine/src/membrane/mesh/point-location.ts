import type { Mesh } from './mesh.ts';
import { orient } from './predicates.ts';

export interface Located {
  readonly triangle: number;
  /** Shares of the three nodes of the triangle, 0 to 1, that add up to 1. */
  readonly weights: readonly [number, number, number];
}

export interface PointLocation {
  /** The triangle that holds the place, edges included; undefined outside the mesh. */
  at(x: number, y: number): Located | undefined;
}

/** Finds triangles by a grid of about as many cells as triangles; exact at edges. */
export const pointLocation = (mesh: Mesh): PointLocation => {
  const grid = new Grid(mesh);
  return { at: (x, y) => grid.find(x, y) };
};

class Grid {
  private readonly mesh: Mesh;
  private readonly left: number;
  private readonly bottom: number;
  private readonly cell: number;
  private readonly columns: number;
  private readonly rows: number;
  /** Triangles of cell k are `listed[starts[k]]` up to `listed[starts[k + 1]]`. */
  private readonly starts: Int32Array;
  private readonly listed: Int32Array;

  constructor(mesh: Mesh) {
    this.mesh = mesh;
    const { points, triangles } = mesh;
    let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let i = 0; i < points.length; i += 2) {
      left = Math.min(left, points[i]!);
      right = Math.max(right, points[i]!);
      bottom = Math.min(bottom, points[i + 1]!);
      top = Math.max(top, points[i + 1]!);
    }
    this.left = left;
    this.bottom = bottom;
    this.cell = Math.sqrt(((right - left) * (top - bottom)) / Math.max(1, triangles.length / 3));
    this.columns = Math.floor((right - left) / this.cell) + 1;
    this.rows = Math.floor((top - bottom) / this.cell) + 1;
    const counts = new Int32Array(this.columns * this.rows + 1);
    this.forEachCell((k) => counts[k + 1]!++);
    for (let k = 1; k < counts.length; k++) counts[k]! += counts[k - 1]!;
    this.starts = counts.slice();
    this.listed = new Int32Array(counts.at(-1)!);
    this.forEachCell((k, t) => {
      this.listed[counts[k]!++] = t;
    });
  }

  /** Every cell that the box of a triangle touches. */
  private forEachCell(visit: (cell: number, triangle: number) => void): void {
    const { points, triangles } = this.mesh;
    for (let t = 0; t < triangles.length / 3; t++) {
      const nodes = [2 * triangles[3 * t]!, 2 * triangles[3 * t + 1]!, 2 * triangles[3 * t + 2]!];
      const xs = nodes.map((p) => this.column(points[p]!));
      const ys = nodes.map((p) => this.row(points[p + 1]!));
      for (let j = Math.min(...ys); j <= Math.max(...ys); j++)
        for (let i = Math.min(...xs); i <= Math.max(...xs); i++) visit(j * this.columns + i, t);
    }
  }

  private column(x: number): number {
    return Math.floor((x - this.left) / this.cell);
  }

  private row(y: number): number {
    return Math.floor((y - this.bottom) / this.cell);
  }

  find(x: number, y: number): Located | undefined {
    const [i, j] = [this.column(x), this.row(y)];
    if (!(i >= 0 && i < this.columns && j >= 0 && j < this.rows)) return undefined;
    const k = j * this.columns + i;
    for (let m = this.starts[k]!; m < this.starts[k + 1]!; m++) {
      const located = this.within(this.listed[m]!, x, y);
      if (located) return located;
    }
    return undefined;
  }

  private within(t: number, x: number, y: number): Located | undefined {
    const { points: p, triangles } = this.mesh;
    const [a, b, c] = [2 * triangles[3 * t]!, 2 * triangles[3 * t + 1]!, 2 * triangles[3 * t + 2]!];
    const wa = orient(p[b]!, p[b + 1]!, p[c]!, p[c + 1]!, x, y);
    if (wa < 0) return undefined;
    const wb = orient(p[c]!, p[c + 1]!, p[a]!, p[a + 1]!, x, y);
    if (wb < 0) return undefined;
    const wc = orient(p[a]!, p[a + 1]!, p[b]!, p[b + 1]!, x, y);
    if (wc < 0) return undefined;
    const sum = wa + wb + wc;
    return { triangle: t, weights: [wa / sum, wb / sum, wc / sum] };
  }
}
