import { type Block, elementMap } from './element-map.ts';
import type { SparsePattern } from './pattern.ts';

/**
 * Neighbours of each node with a lower index, rising, as starts and indices. `start` has nodes + 1
 * entries.
 */
interface LowerNeighbours {
  readonly start: Int32Array;
  readonly node: Int32Array;
}

/** The sorted numbers without repeats; `sorted` is overwritten. */
const eachOnce = (sorted: Float64Array): Float64Array => {
  let kept = 0;
  for (let k = 0; k < sorted.length; k++)
    if (k === 0 || sorted[k] !== sorted[kept - 1]) sorted[kept++] = sorted[k]!;
  return sorted.subarray(0, kept);
};

/** Edges of all triangles as `high * nodes + low`, sorted, each once. */
const sortedEdges = (triangles: Uint32Array, nodes: number): Float64Array => {
  const keys = new Float64Array(triangles.length);
  for (let k = 0; k < triangles.length; k++) {
    const i = triangles[k]!;
    const j = triangles[k % 3 === 2 ? k - 2 : k + 1]!;
    if (i >= nodes) throw new RangeError(`triangle pattern: node ${i} of ${nodes}`);
    if (i === j) throw new RangeError(`triangle pattern: node ${i} twice in one triangle`);
    keys[k] = Math.max(i, j) * nodes + Math.min(i, j);
  }
  return eachOnce(keys.sort());
};

const lowerNeighbours = (triangles: Uint32Array, nodes: number): LowerNeighbours => {
  const keys = sortedEdges(triangles, nodes);
  const start = new Int32Array(nodes + 1);
  const node = new Int32Array(keys.length);
  keys.forEach((key, k) => {
    const high = Math.floor(key / nodes);
    start[high + 1]! += 1;
    node[k] = key - high * nodes;
  });
  for (let i = 0; i < nodes; i++) start[i + 1]! += start[i]!;
  return { start, node };
};

/** Rows of the columns of one node: all unknowns of lower neighbours, then its own down to each. */
const nodeColumns = (
  { start, node }: LowerNeighbours,
  block: Block,
  j: number,
  push: (row: number) => void,
  endColumn: () => void,
): void => {
  for (let a = 0; a < block; a++) {
    for (let p = start[j]!; p < start[j + 1]!; p++)
      for (let b = 0; b < block; b++) push(block * node[p]! + b);
    for (let b = 0; b <= a; b++) push(block * j + b);
    endColumn();
  }
};

/** The pattern of a mesh of triangles and where each entry of each element matrix goes. */
export interface TrianglePattern {
  readonly pattern: SparsePattern;
  /**
   * 6 positions a triangle with one unknown a node, 21 with two: the packed upper triangle of the
   * element matrix (row a, columns b ≥ a), unknowns in the order corner 0, corner 1, corner 2.
   */
  readonly map: Int32Array;
}

/**
 * Pattern of the stiffness of `triangles` (3 node indices each) over `nodes` nodes with `block`
 * unknowns each, and the assembly map, so that assembly is `scatterAdd`. A node in no triangle keeps
 * its diagonal. Throws RangeError on an index beyond `nodes` or a triangle that repeats a node.
 */
export const patternFromTriangles = (
  triangles: Uint32Array,
  nodes: number,
  block: Block,
): TrianglePattern => {
  const lower = lowerNeighbours(triangles, nodes);
  const n = nodes * block;
  const colPtr = new Int32Array(n + 1);
  const entries = lower.node.length * block * block + (nodes * block * (block + 1)) / 2;
  const rowIdx = new Int32Array(entries);
  let at = 0;
  let column = 0;
  const push = (row: number) => {
    rowIdx[at++] = row;
  };
  const endColumn = () => {
    colPtr[++column] = at;
  };
  for (let j = 0; j < nodes; j++) nodeColumns(lower, block, j, push, endColumn);
  const pattern = { n, colPtr, rowIdx };
  return { pattern, map: elementMap(pattern, triangles, 3, block) };
};
