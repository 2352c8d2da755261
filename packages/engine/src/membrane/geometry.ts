import type { Mesh } from './mesh/mesh.ts';

/**
 * Constant-strain triangles at rest, in material axes: `area` mm² and six numbers a triangle in
 * `slopes`, the slopes of the corners' shape functions along material lines 1 and 2 (corner 0 along 1,
 * along 2, corner 1 …), 1/mm. Column i of F is then the sum over corners of place · slope along i.
 */
export interface RestTriangles {
  readonly count: number;
  readonly area: Float64Array;
  readonly slopes: Float64Array;
}

/** `directions`: angle of material line 1 from the x axis in each triangle, radians. */
export const restTriangles = (mesh: Mesh, directions: Float64Array): RestTriangles => {
  const count = mesh.triangles.length / 3;
  const area = new Float64Array(count);
  const slopes = new Float64Array(6 * count);
  for (let e = 0; e < count; e++) {
    const [cos, sin] = [Math.cos(directions[e]!), Math.sin(directions[e]!)];
    const corner = (k: number): readonly [number, number] => {
      const node = mesh.triangles[3 * e + (k % 3)]!;
      const [x, y] = [mesh.points[2 * node]!, mesh.points[2 * node + 1]!];
      return [cos * x + sin * y, cos * y - sin * x];
    };
    const [p, q, r] = [corner(0), corner(1), corner(2)];
    const twice = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
    area[e] = twice / 2;
    for (let k = 0; k < 3; k++) {
      const [after, before] = [corner(k + 1), corner(k + 2)];
      slopes[6 * e + 2 * k] = (after[1] - before[1]) / twice;
      slopes[6 * e + 2 * k + 1] = (before[0] - after[0]) / twice;
    }
  }
  return { count, area, slopes };
};

/** Area of the sheet that each node stands for, mm²: a third of every triangle around it. */
export const nodeAreas = (mesh: Mesh, { area }: RestTriangles): Float64Array => {
  const areas = new Float64Array(mesh.points.length / 2);
  mesh.triangles.forEach((node, k) => {
    areas[node]! += area[Math.floor(k / 3)]! / 3;
  });
  return areas;
};
