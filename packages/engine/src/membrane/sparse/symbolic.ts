import type { Block } from './element-map.ts';
import {
  type EarlierNeighbours,
  earlierNeighbours,
  eliminationTree,
  placesOf,
  postorder,
} from './elimination-tree.ts';
import { type Fill, fillOf } from './fill.ts';
import { minimumDegreeOrder } from './minimum-degree.ts';
import { type Graph, nodeGraph } from './node-graph.ts';
import { checkPattern, type SparsePattern } from './pattern.ts';

/**
 * All about a factorisation that the pattern alone decides, to be used for any values. Its numbers
 * are nodes of `block` unknowns, in order of elimination.
 */
export interface Symbolic {
  readonly pattern: SparsePattern;
  readonly block: Block;
  /** Nodes. */
  readonly count: number;
  /** `order[k]` is the node eliminated k-th. */
  readonly order: Int32Array;
  /** Elimination tree: parent of each column, -1 at a root. */
  readonly parent: Int32Array;
  /** The factor's pattern. */
  readonly fill: Fill;
  /** The reordered matrix left of its diagonal, by rows. */
  readonly matrix: EarlierNeighbours;
  /**
   * Where each value goes in the kernel's copy of the matrix: diagonal blocks first, then those of
   * `matrix`, block² numbers each; in a block, unknown b of the earlier node and a of the later are
   * at `block * a + b`.
   */
  readonly slot: Int32Array;
  /** Entries of L below its diagonal of ones that the kernel keeps, zeros within blocks included. */
  readonly factorEntries: number;
}

export type Ordering = 'minimum-degree' | 'natural';

const orderOf = (graph: Graph, ordering: Ordering): Int32Array => {
  if (ordering === 'natural') return new Int32Array(graph.count).map((_, i) => i);
  const first = minimumDegreeOrder(graph);
  const tree = eliminationTree(earlierNeighbours(graph, first));
  return postorder(tree).map((k) => first[k]!);
};

const positionInRow = ({ start, place }: EarlierNeighbours, k: number, i: number): number => {
  let low = start[k]!;
  let high = start[k + 1]! - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (place[middle]! < i) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Number of the block of two places: diagonal ones first, then those of `matrix`. */
const blockOf = (matrix: EarlierNeighbours, count: number, i: number, k: number): number => {
  if (i === k) return k;
  return count + (i < k ? positionInRow(matrix, k, i) : positionInRow(matrix, i, k));
};

/** Slots of the entries of column j: its rows rise, so those of one node follow each other. */
const columnSlots = (
  { colPtr, rowIdx }: SparsePattern,
  block: Block,
  placeOf: Int32Array,
  matrix: EarlierNeighbours,
  slot: Int32Array,
  j: number,
): void => {
  const k = placeOf[Math.floor(j / block)]!;
  let i = -1;
  let first = 0;
  for (let p = colPtr[j]!; p < colPtr[j + 1]!; p++) {
    const row = rowIdx[p]!;
    const place = placeOf[Math.floor(row / block)]!;
    if (place !== i) {
      i = place;
      first = block * block * blockOf(matrix, placeOf.length, i, k);
    }
    const inRow = row % block;
    const inColumn = j % block;
    slot[p] = first + (i > k ? block * inRow + inColumn : block * inColumn + inRow);
  }
};

const slotsOf = (
  pattern: SparsePattern,
  block: Block,
  placeOf: Int32Array,
  matrix: EarlierNeighbours,
): Int32Array => {
  const slot = new Int32Array(pattern.rowIdx.length);
  for (let j = 0; j < pattern.n; j++) columnSlots(pattern, block, placeOf, matrix, slot, j);
  return slot;
};

/**
 * Orders and lays out the factorisation of every matrix of this pattern. `block` 2 keeps the two
 * unknowns of each node together, which needs an even n. Throws RangeError on a pattern that breaks
 * its promise. Time about linear in the entries of the factor.
 */
export const analyse = (
  pattern: SparsePattern,
  block: Block = 1,
  ordering: Ordering = 'minimum-degree',
): Symbolic => {
  checkPattern(pattern);
  if (pattern.n % block !== 0)
    throw new RangeError(`analyse: ${pattern.n} unknowns are no whole number of pairs`);
  const graph = nodeGraph(pattern, block);
  const order = orderOf(graph, ordering);
  const matrix = earlierNeighbours(graph, order);
  const parent = eliminationTree(matrix);
  const fill = fillOf(matrix, parent);
  return {
    pattern,
    block,
    count: graph.count,
    order,
    parent,
    fill,
    matrix,
    slot: slotsOf(pattern, block, placesOf(order), matrix),
    factorEntries: fill.rowIdx.length * block * block + (block === 2 ? graph.count : 0),
  };
};
