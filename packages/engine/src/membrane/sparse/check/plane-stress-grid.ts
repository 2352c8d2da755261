import { randomSource } from '../../../stats/index.ts';
import { packedLength, scatterAdd } from '../element-map.ts';
import type { SparsePattern } from '../pattern.ts';
import { patternFromTriangles } from '../triangle-pattern.ts';

/** A mesh for checks: x0, y0, x1, y1, … and 3 node indices a triangle, counter-clockwise. */
export interface CheckMesh {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
}

/**
 * `columns` × `rows` nodes one apart, each moved by up to a fifth, cells cut along either diagonal
 * by chance: as irregular as a Delaunay mesh, and every triangle keeps its turn.
 */
export const jitteredGrid = (columns: number, rows: number, seed: number): CheckMesh => {
  const source = randomSource(seed);
  const points = new Float64Array(2 * columns * rows);
  for (let k = 0; k < columns * rows; k++) {
    points[2 * k] = (k % columns) + 0.4 * (source.uniform() - 0.5);
    points[2 * k + 1] = Math.floor(k / columns) + 0.4 * (source.uniform() - 0.5);
  }
  const triangles: number[] = [];
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const a = row * columns + column;
      const [b, c, d] = [a + 1, a + columns + 1, a + columns];
      if (source.uniform() < 0.5) triangles.push(a, b, c, a, c, d);
      else triangles.push(a, b, d, b, c, d);
    }
  return { points, triangles: Uint32Array.from(triangles) };
};

/** ν of the sheet; E and the thickness are 1. */
const POISSON = 0.3;

/** Slopes of the three shape functions and the area of triangle `t`. */
const slopes = ({ points, triangles }: CheckMesh, t: number) => {
  const corner = [0, 1, 2].map((c) => triangles[3 * t + c]!);
  const x = corner.map((i) => points[2 * i]!);
  const y = corner.map((i) => points[2 * i + 1]!);
  const twice = (x[1]! - x[0]!) * (y[2]! - y[0]!) - (x[2]! - x[0]!) * (y[1]! - y[0]!);
  const next = (c: number) => (c + 1) % 3;
  const last = (c: number) => (c + 2) % 3;
  return {
    dx: [0, 1, 2].map((c) => (y[next(c)]! - y[last(c)]!) / twice),
    dy: [0, 1, 2].map((c) => (x[last(c)]! - x[next(c)]!) / twice),
    area: twice / 2,
  };
};

/** Constant-strain triangle in plane stress, packed upper triangle (Zienkiewicz and Taylor). */
const elementStiffness = (mesh: CheckMesh, t: number): number[] => {
  const { dx, dy, area } = slopes(mesh, t);
  const c = area / (1 - POISSON * POISSON);
  const shear = (1 - POISSON) / 2;
  const entry = (a: number, b: number): number => {
    const [i, j] = [a >> 1, b >> 1];
    const [u, v] = a & 1 ? [dy, dx] : [dx, dy];
    return (a & 1) === (b & 1)
      ? c * (u[i]! * u[j]! + shear * v[i]! * v[j]!)
      : c * (POISSON * u[i]! * v[j]! + shear * v[i]! * u[j]!);
  };
  const packed: number[] = [];
  for (let a = 0; a < 6; a++) for (let b = a; b < 6; b++) packed.push(entry(a, b));
  return packed;
};

/** A symmetric matrix: pattern and a value for each entry of its upper triangle. */
export interface CheckMatrix {
  readonly pattern: SparsePattern;
  readonly values: Float64Array;
}

/** Stiffness of a sheet of the mesh, two unknowns a node, before anything holds it. */
export const looseStiffness = (mesh: CheckMesh): CheckMatrix => {
  const { pattern, map } = patternFromTriangles(mesh.triangles, mesh.points.length / 2, 2);
  const count = mesh.triangles.length / 3;
  const entries = new Float64Array(count * packedLength(3, 2));
  for (let t = 0; t < count; t++) entries.set(elementStiffness(mesh, t), t * packedLength(3, 2));
  const values = new Float64Array(pattern.rowIdx.length);
  scatterAdd(values, map, entries);
  return { pattern, values };
};

/** The same sheet on stiff springs (10 times its own stiffness) at the nodes of its first row. */
export const heldStiffness = (columns: number, rows: number, seed: number): CheckMatrix => {
  const { pattern, values } = looseStiffness(jitteredGrid(columns, rows, seed));
  for (let j = 0; j < 2 * columns; j++) values[pattern.colPtr[j + 1]! - 1]! += 10;
  return { pattern, values };
};

/** A x, from the upper triangle. */
export const times = ({ pattern, values }: CheckMatrix, x: Float64Array): Float64Array => {
  const y = new Float64Array(pattern.n);
  for (let j = 0; j < pattern.n; j++)
    for (let p = pattern.colPtr[j]!; p < pattern.colPtr[j + 1]!; p++) {
      const i = pattern.rowIdx[p]!;
      y[i]! += values[p]! * x[j]!;
      if (i !== j) y[j]! += values[p]! * x[i]!;
    }
  return y;
};
