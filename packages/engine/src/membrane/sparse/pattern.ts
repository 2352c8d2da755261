/**
 * Where a symmetric matrix may be other than zero: the upper triangle with its diagonal, by columns.
 * Column j holds rows `rowIdx[colPtr[j]] … rowIdx[colPtr[j + 1] - 1]`, rising, the last one j itself.
 */
export interface SparsePattern {
  /** Rows and columns. */
  readonly n: number;
  /** n + 1 starts, the last one the number of entries. */
  readonly colPtr: Int32Array;
  /** Row of each entry, at most its column. */
  readonly rowIdx: Int32Array;
}

const columnFault = ({ colPtr, rowIdx }: SparsePattern, j: number): string => {
  const first = colPtr[j]!;
  const end = colPtr[j + 1]!;
  if (end <= first || rowIdx[end - 1] !== j) return `column ${j} does not end on its diagonal`;
  if (rowIdx[first]! < 0) return `column ${j} has a negative row`;
  for (let p = first + 1; p < end; p++)
    if (rowIdx[p - 1]! >= rowIdx[p]!) return `rows of column ${j} do not rise`;
  return '';
};

/** Throws RangeError where `pattern` breaks its own promise: a bug of the caller. */
export const checkPattern = (pattern: SparsePattern): void => {
  const { n, colPtr, rowIdx } = pattern;
  if (!(Number.isInteger(n) && n >= 0) || colPtr.length !== n + 1 || colPtr[0] !== 0)
    throw new RangeError(`pattern: ${n} columns need ${n + 1} starts from 0`);
  if (colPtr[n] !== rowIdx.length)
    throw new RangeError(`pattern: ${rowIdx.length} rows, but the last start is ${colPtr[n]}`);
  for (let j = 0; j < n; j++) {
    const fault = columnFault(pattern, j);
    if (fault !== '') throw new RangeError(`pattern: ${fault}`);
  }
};

/**
 * Position in `values` of the entry (row, column), either triangle asked; -1 where the pattern has
 * none. Binary search within the column.
 */
export const entryPosition = (pattern: SparsePattern, row: number, column: number): number => {
  const i = Math.min(row, column);
  const j = Math.max(row, column);
  let low = pattern.colPtr[j]!;
  let high = pattern.colPtr[j + 1]! - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (pattern.rowIdx[middle]! < i) low = middle + 1;
    else high = middle;
  }
  return pattern.rowIdx[low] === i ? low : -1;
};
