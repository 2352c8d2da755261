import type { EarlierNeighbours } from './elimination-tree.ts';

/** Where the factor may be other than zero, left of and below its diagonal, by rows and by columns. */
export interface Fill {
  readonly rowPtr: Int32Array;
  /** Columns of each row, rising. */
  readonly rowCol: Int32Array;
  readonly colPtr: Int32Array;
  /** Rows of each column, rising. */
  readonly rowIdx: Int32Array;
  /** Rows below the diagonal in each column. */
  readonly columnCounts: Int32Array;
}

/**
 * Visits the columns of row `k` of the factor: from each entry of the matrix up the elimination tree
 * until a column seen before. `seen` holds the last row each column was seen from.
 */
const eachInRow = (
  { start, place }: EarlierNeighbours,
  parent: Int32Array,
  seen: Int32Array,
  k: number,
  visit: (column: number) => void,
): void => {
  seen[k] = k;
  for (let p = start[k]!; p < start[k + 1]!; p++)
    for (let i = place[p]!; seen[i] !== k; i = parent[i]!) {
      seen[i] = k;
      visit(i);
    }
};

const countColumns = (earlier: EarlierNeighbours, parent: Int32Array): Int32Array => {
  const counts = new Int32Array(parent.length);
  const seen = new Int32Array(parent.length).fill(-1);
  for (let k = 0; k < parent.length; k++)
    eachInRow(earlier, parent, seen, k, (i) => {
      counts[i]! += 1;
    });
  return counts;
};

const startsOf = (counts: Int32Array): Int32Array => {
  const start = new Int32Array(counts.length + 1);
  counts.forEach((count, i) => {
    start[i + 1] = start[i]! + count;
  });
  return start;
};

/** The pattern of the factor, from the reordered matrix and its elimination tree. */
export const fillOf = (earlier: EarlierNeighbours, parent: Int32Array): Fill => {
  const count = parent.length;
  const columnCounts = countColumns(earlier, parent);
  const colPtr = startsOf(columnCounts);
  const rowPtr = new Int32Array(count + 1);
  const rowCol = new Int32Array(colPtr[count]!);
  const rowIdx = new Int32Array(colPtr[count]!);
  const next = colPtr.slice();
  const seen = new Int32Array(count).fill(-1);
  let at = 0;
  for (let k = 0; k < count; k++) {
    eachInRow(earlier, parent, seen, k, (i) => {
      rowCol[at++] = i;
      rowIdx[next[i]!++] = k;
    });
    rowCol.subarray(rowPtr[k]!, at).sort();
    rowPtr[k + 1] = at;
  }
  return { rowPtr, rowCol, colPtr, rowIdx, columnCounts };
};
