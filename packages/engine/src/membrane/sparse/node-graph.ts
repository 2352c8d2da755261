import type { Block } from './element-map.ts';
import type { SparsePattern } from './pattern.ts';

/** An undirected graph: neighbours of i are `neighbour[start[i]] … neighbour[start[i + 1] - 1]`. */
export interface Graph {
  readonly count: number;
  readonly start: Int32Array;
  /** Each edge from both ends, each neighbour once, no loops. */
  readonly neighbour: Int32Array;
}

/** Calls `edge(i, j)` once for every pair of different nodes i < j that share an entry. */
const eachNodePair = (
  { n, colPtr, rowIdx }: SparsePattern,
  block: Block,
  edge: (i: number, j: number) => void,
): void => {
  const seenFrom = new Int32Array(n / block).fill(-1);
  for (let j = 0; j < n / block; j++)
    for (let p = colPtr[block * j]!; p < colPtr[block * (j + 1)]!; p++) {
      const i = block === 2 ? rowIdx[p]! >> 1 : rowIdx[p]!;
      if (i === j || seenFrom[i] === j) continue;
      seenFrom[i] = j;
      edge(i, j);
    }
};

/** The graph of nodes of `block` unknowns each: neighbours where any of their unknowns meet. */
export const nodeGraph = (pattern: SparsePattern, block: Block): Graph => {
  const count = pattern.n / block;
  const start = new Int32Array(count + 1);
  eachNodePair(pattern, block, (i, j) => {
    start[i + 1]! += 1;
    start[j + 1]! += 1;
  });
  for (let i = 0; i < count; i++) start[i + 1]! += start[i]!;
  const neighbour = new Int32Array(start[count]!);
  const next = start.slice();
  eachNodePair(pattern, block, (i, j) => {
    neighbour[next[i]!++] = j;
    neighbour[next[j]!++] = i;
  });
  return { count, start, neighbour };
};
