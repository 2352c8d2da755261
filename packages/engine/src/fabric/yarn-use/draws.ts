import type { NormalColumns } from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import { type DoubtColumns, doubtColumns } from './columns.ts';
import { workFaults } from './faults.ts';
import { yarnModel } from './model.ts';
import { neededTerms, returnedTerms, type Term } from './terms.ts';
import type { YarnDraws, YarnQuestion, YarnWork } from './types.ts';

/** Sum of the terms over the draws, metres. */
export const metresOf = (columns: DoubtColumns, terms: readonly Term[]): Float64Array => {
  const total = new Float64Array(columns.n);
  for (const { count, doubts } of terms) {
    const logs = doubts.map((doubt) => columns.log(doubt));
    for (let i = 0; i < total.length; i++) {
      let log = 0;
      for (let k = 0; k < logs.length; k++) log += logs[k]![i]!;
      total[i]! += (count / 1000) * Math.exp(log);
    }
  }
  return total;
};

/** Metres as grams, each draw by its own metres per 100 g. */
export const gramsOf = (metres: Float64Array, metresPer100g: Float64Array): Float64Array =>
  metres.map((each, i) => (100 * each) / metresPer100g[i]!);

export const yarnDrawsOf = (columns: DoubtColumns, work: YarnWork): YarnDraws => {
  const metresPer100g = columns.log('metres').map(Math.exp);
  const neededM = metresOf(columns, neededTerms(work));
  const returnedM = metresOf(columns, returnedTerms(work));
  return {
    n: columns.n,
    neededM,
    neededG: gramsOf(neededM, metresPer100g),
    returnedM,
    returnedG: gramsOf(returnedM, metresPer100g),
    metresPer100g,
  };
};

/**
 * Yarn needed and given back over the draws of `normals`, which names its columns `yarn:…`: works
 * that are compared on the same columns are compared on the same luck.
 */
export const yarnDraws = (
  question: YarnQuestion,
  work: YarnWork,
  normals: NormalColumns,
): Result<YarnDraws> => {
  const faults = workFaults(work);
  const model = yarnModel(question);
  if (faults.length > 0 || !model.ok) return fail(...(model.ok ? [] : model.faults), ...faults);
  return ok(yarnDrawsOf(doubtColumns(model.value, normals), work));
};
