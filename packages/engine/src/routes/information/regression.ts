import { cholesky, solveLower, solveUpper } from '../../stats/index.ts';

/** Least squares on one half of the draws: those of index `half` modulo 2. */
export interface HalfFit {
  /** Fitted values over the other half; 0 in the half that was learnt from. */
  predict(worth: Float64Array): Float64Array;
}

/** A share of the mean square of a column, added so that columns that are the same share what they explain. */
const RIDGE = 1e-9;

/** Normal equations of some columns on a half of the draws, factored once for all that is regressed on them. */
export const halfFit = (columns: readonly Float64Array[], half: 0 | 1): HalfFit => {
  const p = columns.length;
  const n = columns[0]!.length;
  const gram = new Float64Array(p * p);
  for (let j = 0; j < p; j++)
    for (let k = 0; k <= j; k++) {
      const [a, b] = [columns[j]!, columns[k]!];
      let sum = 0;
      for (let i = half; i < n; i += 2) sum += a[i]! * b[i]!;
      gram[j * p + k] = sum;
    }
  for (let j = 0; j < p; j++) gram[j * p + j]! += RIDGE * n;
  const lower = cholesky(gram, p);
  return {
    predict: (worth) => {
      const right = Float64Array.from(columns, (column) => {
        let sum = 0;
        for (let i = half; i < n; i += 2) sum += column[i]! * worth[i]!;
        return sum;
      });
      const weights = solveUpper(lower, p, solveLower(lower, p, right));
      const out = new Float64Array(n);
      for (let j = 0; j < p; j++) {
        const [column, weight] = [columns[j]!, weights[j]!];
        for (let i = 1 - half; i < n; i += 2) out[i]! += weight * column[i]!;
      }
      return out;
    },
  };
};
