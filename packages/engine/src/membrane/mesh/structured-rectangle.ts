import type { Mesh } from './mesh.ts';

/** Tags of the edges of a structured rectangle. */
export const RECTANGLE_TAGS = { bottom: 0, right: 1, top: 2, left: 3 } as const;

/**
 * Rectangle from the origin to (width, height) mm in nx × ny equal cells (whole numbers from 1), two
 * triangles each. Diagonals rise to the right, or alternate like a chessboard. Node (i, j) has index
 * j (nx + 1) + i. A count or size outside these ranges throws: it is a bug of the caller.
 */
export const structuredRectangle = (
  width: number,
  height: number,
  nx: number,
  ny: number,
  diagonals: 'same' | 'alternate' = 'same',
): Mesh => {
  if (![nx, ny].every((n) => Number.isInteger(n) && n > 0) || !(width > 0) || !(height > 0))
    throw new RangeError(`no rectangle: ${width} × ${height} in ${nx} × ${ny}`);
  const node = (i: number, j: number) => j * (nx + 1) + i;
  const points = new Float64Array(2 * (nx + 1) * (ny + 1));
  const triangles: number[] = [];
  for (let j = 0; j <= ny; j++)
    for (let i = 0; i <= nx; i++) {
      points[2 * node(i, j)] = (width * i) / nx;
      points[2 * node(i, j) + 1] = (height * j) / ny;
      if (i === nx || j === ny) continue;
      const [a, b, c, d] = [node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)];
      const rising = diagonals === 'same' || (i + j) % 2 === 0;
      triangles.push(...(rising ? [a, b, c, a, c, d] : [a, b, d, b, c, d]));
    }
  const { edges, tags } = borderOf(nx, ny, node);
  return {
    points,
    triangles: Uint32Array.from(triangles),
    edges: Uint32Array.from(edges),
    edgeTags: Int32Array.from(tags),
  };
};

const borderOf = (nx: number, ny: number, node: (i: number, j: number) => number) => {
  const edges: number[] = [];
  const tags: number[] = [];
  const put = (a: number, b: number, tag: number) => {
    edges.push(a, b);
    tags.push(tag);
  };
  for (let i = 0; i < nx; i++) put(node(i, 0), node(i + 1, 0), RECTANGLE_TAGS.bottom);
  for (let j = 0; j < ny; j++) put(node(nx, j), node(nx, j + 1), RECTANGLE_TAGS.right);
  for (let i = nx; i > 0; i--) put(node(i, ny), node(i - 1, ny), RECTANGLE_TAGS.top);
  for (let j = ny; j > 0; j--) put(node(0, j), node(0, j - 1), RECTANGLE_TAGS.left);
  return { edges, tags };
};
