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

/** Yarn of one work after another over the same draws. */
export type YarnDrawer = (work: YarnWork) => Result<YarnDraws>;

/**
 * Yarn needed and given back over the draws of `normals`, which names its columns `yarn:…`: works
 * that are compared on the same columns are compared on the same luck. Faults of the question come at once,
 * those of a work with it.
 */
export const yarnDrawer = (question: YarnQuestion, normals: NormalColumns): Result<YarnDrawer> => {
  const model = yarnModel(question);
  if (!model.ok) return model;
  const columns = doubtColumns(model.value, normals);
  return ok((work) => {
    const faults = workFaults(work);
    return faults.length > 0 ? fail(...faults) : ok(yarnDrawsOf(columns, work));
  });
};

/** The same for one work. */
export const yarnDraws = (
  question: YarnQuestion,
  work: YarnWork,
  normals: NormalColumns,
): Result<YarnDraws> => {
  const drawer = yarnDrawer(question, normals);
  if (drawer.ok) return drawer.value(work);
  return fail(...drawer.faults, ...workFaults(work));
};
