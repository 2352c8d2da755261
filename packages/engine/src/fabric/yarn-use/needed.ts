import { type Affine, add, constant, spreadOfLogNormal } from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import type { Basis } from '../basis.ts';
import { workFaults } from './faults.ts';
import { massForm, type YarnModel, yarnModel } from './model.ts';
import { sumOf } from './sum.ts';
import { formOf, neededTerms, returnedTerms, type Term } from './terms.ts';
import type { YarnAmount, YarnNeed, YarnQuestion, YarnWork } from './types.ts';

const NONE = { p5: 0, p50: 0, p95: 0 };
const MM_TO_M = constant(Math.log(1e-3));

const amountOf = (model: YarnModel, terms: readonly Term[]): YarnAmount => {
  const mm = terms.map((term) => formOf(model, term));
  const spread = (forms: readonly Affine[]) => {
    const sum = sumOf(model.post, forms);
    return sum === null ? NONE : spreadOfLogNormal(sum);
  };
  return {
    metres: spread(mm.map((form) => add(form, MM_TO_M))),
    grams: spread(mm.map((form) => massForm(form, model.forms.metres))),
  };
};

const WORK_BASES: readonly Basis[] = [
  {
    id: 'yarn-edges',
    kind: 'from-memory',
    text: 'A stitch cast on or bound off takes about three times its width of yarn',
    source: null,
  },
  {
    id: 'yarn-seams-ends',
    kind: 'common-practice',
    text: 'A seam takes two to four times its length, and each end {mm:100} to {mm:250}',
    source: null,
  },
];
const RIPPED: Basis = {
  id: 'yarn-ripped',
  kind: 'common-practice',
  text: 'Of ripped yarn 85 to 97 % can be knit again; it is crimped until it is washed',
  source: null,
};

/**
 * Yarn that the work takes, in metres and in grams, with what ripping gives back told apart. Closed
 * form: each amount is the log-normal that has the mean and variance of the sum. Linear in every
 * count. Faults for counts below 0 and for a question that cannot be.
 */
export const yarnNeeded = (question: YarnQuestion, work: YarnWork): Result<YarnNeed> => {
  const faults = workFaults(work);
  const model = yarnModel(question);
  if (faults.length > 0 || !model.ok) return fail(...(model.ok ? [] : model.faults), ...faults);
  const terms = neededTerms(work);
  const returned = returnedTerms(work);
  return ok({
    needed: amountOf(model.value, terms),
    returned: returned.length === 0 ? null : amountOf(model.value, returned),
    parts: work.parts.map(({ name }, part) => ({
      name,
      ...amountOf(
        model.value,
        terms.filter((term) => term.part === part),
      ),
    })),
    extras: amountOf(
      model.value,
      terms.filter((term) => term.part < 0),
    ),
    bases: [...model.value.bases, ...WORK_BASES, ...(returned.length > 0 ? [RIPPED] : [])],
  });
};
