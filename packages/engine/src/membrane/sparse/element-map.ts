import { entryPosition, type SparsePattern } from './pattern.ts';

/** Unknowns of each node: 1 or 2. Unknown `a` of node `i` is `block * i + a`. */
export type Block = 1 | 2;

/** Entries in the packed upper triangle of an element matrix: rows a, columns b ≥ a, row by row. */
export const packedLength = (corners: number, block: Block): number => {
  const m = corners * block;
  return (m * (m + 1)) / 2;
};

/**
 * For elements of `corners` nodes each (`nodes` lists them one element after another), the position
 * in `values` of every entry of the packed upper triangle of every element matrix, element by
 * element. The matrices are symmetric, so an entry that lands below the diagonal of the whole goes
 * to its mirror image. Throws RangeError where the pattern lacks an entry.
 */
export const elementMap = (
  pattern: SparsePattern,
  nodes: Uint32Array,
  corners: number,
  block: Block,
): Int32Array => {
  const m = corners * block;
  const map = new Int32Array((nodes.length / corners) * packedLength(corners, block));
  const unknown = (first: number, a: number) =>
    block * nodes[first + Math.floor(a / block)]! + (a % block);
  let at = 0;
  for (let first = 0; first < nodes.length; first += corners)
    for (let a = 0; a < m; a++)
      for (let b = a; b < m; b++) map[at++] = known(pattern, unknown(first, a), unknown(first, b));
  return map;
};

const known = (pattern: SparsePattern, i: number, j: number): number => {
  const at = Math.max(i, j) < pattern.n ? entryPosition(pattern, i, j) : -1;
  if (at < 0) throw new RangeError(`element map: the pattern has no entry (${i}, ${j})`);
  return at;
};

/**
 * Adds packed element matrices into `values`: `entries[k]` goes to `values[map[k]]`. The order of
 * `map` is the order of adding, so the sum is the same to the last bit every time.
 */
export const scatterAdd = (values: Float64Array, map: Int32Array, entries: Float64Array): void => {
  for (let k = 0; k < map.length; k++) values[map[k]!]! += entries[k]!;
};
