import {
  type Affine,
  add,
  constant,
  type NormalColumns,
  scale,
  spreadOfLogNormal,
} from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import type { Basis } from '../basis.ts';
import { BALL_SD, SCALE_SD_G } from './assumptions.ts';
import { type DoubtColumns, doubtColumns } from './columns.ts';
import { stockFaults } from './faults.ts';
import { type Doubt, type YarnModel, yarnModel } from './model.ts';
import { sumOf } from './sum.ts';
import type { YarnAmount, YarnHeld, YarnLot, YarnQuestion, YarnStock } from './types.ts';

/** Grams in the room as so many times the exponential of weighted doubts. */
interface HeldTerm {
  readonly count: number;
  readonly doubts: readonly (readonly [Doubt, number])[];
}

/**
 * A lot weighs what its label says, as far as balls do and as the room's air has it; where only
 * metres are printed, what those weigh.
 */
export const lotTerms = ({ skeins, gramsEach, metresEach }: YarnLot): HeldTerm[] => {
  if (skeins === 0) return [];
  if (gramsEach !== null)
    return [
      {
        count: skeins * gramsEach,
        doubts: [
          ['air', 1],
          ['ball', 1],
        ],
      },
    ];
  return metresEach === null
    ? []
    : [
        {
          count: skeins * metresEach * 100,
          doubts: [
            ['metres', -1],
            ['ball', 1],
          ],
        },
      ];
};

/** All of it: by the scale where it was weighed, else lot by lot. */
export const stockTerms = ({ lots, leftG }: YarnStock): HeldTerm[] => {
  if (leftG === null) return lots.flatMap(lotTerms);
  return leftG === 0
    ? []
    : [{ count: leftG, doubts: [['scale', SCALE_SD_G / Math.max(leftG, 1)]] }];
};

const formOf = ({ forms }: YarnModel, { count, doubts }: HeldTerm): Affine =>
  add(constant(Math.log(count)), ...doubts.map(([doubt, weight]) => scale(forms[doubt], weight)));

const amountOf = (model: YarnModel, terms: readonly HeldTerm[]): YarnAmount => {
  const grams = terms.map((term) => formOf(model, term));
  const spread = (forms: readonly Affine[]) =>
    spreadOfLogNormal(sumOf(model.post, forms) ?? { median: 0, logSd: 0 });
  const lengthOf = (form: Affine) => add(form, model.forms.metres, constant(Math.log(0.01)));
  return { grams: spread(grams), metres: spread(grams.map(lengthOf)) };
};

/** Grams over the draws. */
export const heldGrams = (columns: DoubtColumns, terms: readonly HeldTerm[]): Float64Array => {
  const total = new Float64Array(columns.n);
  for (const { count, doubts } of terms)
    for (let i = 0; i < total.length; i++) {
      let log = 0;
      for (const [doubt, weight] of doubts) log += weight * columns.log(doubt)[i]!;
      total[i]! += count * Math.exp(log);
    }
  return total;
};

const basisOf = ({ leftG }: YarnStock): Basis =>
  leftG === null
    ? {
        id: 'yarn-balls',
        kind: 'assumption',
        text: `Balls are as heavy as their labels say within ${BALL_SD * 100} % (SD), apart from the air`,
        source: null,
      }
    : {
        id: 'yarn-left',
        kind: 'measured',
        text: `${leftG} g are left by the scale, within ${SCALE_SD_G} g (SD)`,
        source: null,
      };

/**
 * Yarn at hand in metres and in grams as a scale in this room shows them, lot by lot and in all. What
 * was weighed stands for all lots. Faults for sizes that are missing or impossible.
 */
export const yarnHeld = (question: YarnQuestion, stock: YarnStock): Result<YarnHeld> => {
  const faults = stockFaults(stock);
  const model = yarnModel(question);
  if (faults.length > 0 || !model.ok) return fail(...(model.ok ? [] : model.faults), ...faults);
  return ok({
    ...amountOf(model.value, stockTerms(stock)),
    lots: stock.lots.map((lot) => ({
      dyeLot: lot.dyeLot,
      ...amountOf(model.value, lotTerms(lot)),
    })),
    bases: [basisOf(stock)],
  });
};

/** Grams at hand over the draws of `normals`, on the same luck as `yarnDraws`. */
export const heldDraws = (
  question: YarnQuestion,
  stock: YarnStock,
  normals: NormalColumns,
): Result<Float64Array> => {
  const faults = stockFaults(stock);
  const model = yarnModel(question);
  if (faults.length > 0 || !model.ok) return fail(...(model.ok ? [] : model.faults), ...faults);
  return ok(heldGrams(doubtColumns(model.value, normals), stockTerms(stock)));
};
