import { cholesky, jointOf, type NormalColumns } from '../../stats/index.ts';
import { DOUBTS, type Doubt, type YarnModel } from './model.ts';

/** Draws of the doubts, one column of logarithms each, made when asked for and then kept. */
export interface DoubtColumns {
  readonly n: number;
  log(doubt: Doubt): Float64Array;
}

/**
 * Columns of the doubts from standard normals named `yarn:…`: row j of the Cholesky factor of their
 * joint covariance mixes the first j normals, in the order of `DOUBTS`, so that questions which
 * differ only in their work share all luck.
 */
export const doubtColumns = ({ forms, post }: YarnModel, normals: NormalColumns): DoubtColumns => {
  const k = DOUBTS.length;
  const { mean, covariance } = jointOf(
    post,
    DOUBTS.map((doubt) => forms[doubt]),
  );
  const factor = cholesky(covariance, k);
  const mix = (doubt: Doubt): Float64Array => {
    const row = DOUBTS.indexOf(doubt);
    const column = new Float64Array(normals.n).fill(mean[row]!);
    for (let m = 0; m <= row; m++) {
      const weight = factor[row * k + m]!;
      if (weight === 0) continue;
      const z = normals.normal(`yarn:${DOUBTS[m]}`);
      for (let i = 0; i < column.length; i++) column[i]! += weight * z[i]!;
    }
    return column;
  };
  const made = new Map<Doubt, Float64Array>();
  return {
    n: normals.n,
    log: (doubt) => {
      const column = made.get(doubt) ?? mix(doubt);
      made.set(doubt, column);
      return column;
    },
  };
};
