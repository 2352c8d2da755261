import {
  type Affine,
  add,
  constant,
  type Observation,
  type Posterior,
  posterior,
  scale,
  Unknowns,
} from '../../stats/index.ts';
import { STITCHES, type Stitch } from '../../textile/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import type { Basis } from '../basis.ts';
import { labelAir } from './air.ts';
import {
  BALL_SD,
  DRIFT_SD,
  EDGE,
  EXTENTS_SD,
  LOOP_OWN_SD,
  LOOP_SHARED_SD,
  type Ratio,
  RETURNED,
  SCALE_SD_G,
  SEAM,
  STITCH_RATIOS,
  TAIL_MM,
} from './assumptions.ts';
import { yarnFaults } from './faults.ts';
import { loopEstimates, loopPrior, metresPrior } from './priors.ts';
import type { WeighedFabric, YarnFrom, YarnQuestion } from './types.ts';

/** Doubts of a yarn and its use, each the logarithm of what it names. Order and names are kept: columns go by them. */
export const DOUBTS = [
  'air',
  'metres',
  ...STITCHES,
  'edge',
  'seam',
  'tail',
  'drift',
  'returned',
  'ball',
  'scale',
] as const;
export type Doubt = (typeof DOUBTS)[number];

/**
 * What is known of a yarn and of how much this hand takes of it, as a joint normal of logarithms:
 * `metres` per 100 g in the room, mm in a stitch of each pattern, `air` is mass in the room over
 * mass on the label. Weighings, gauge and label meet in one closed posterior, in any order.
 */
export interface YarnModel {
  readonly forms: Readonly<Record<Doubt, Affine>>;
  readonly post: Posterior;
  readonly bases: readonly Basis[];
}

/** Log grams in a stitch: mm / (m per 100 g) / 10. */
export const massForm = (loop: Affine, metres: Affine): Affine =>
  add(loop, scale(metres, -1), constant(Math.log(0.1)));

const weighedSd = ({ massG, up, counts }: WeighedFabric): number =>
  Math.hypot(
    SCALE_SD_G / massG,
    EDGE.rowsSd / (up + EDGE.rows),
    counts === 'counted' ? 0 : EXTENTS_SD,
  );

/** Grams in a stitch of it: its cast-on and bound-off edges count as `EDGE.rows` rows more. */
const gramsPerStitch = ({ massG, across, up }: WeighedFabric): number =>
  massG / (across * (up + EDGE.rows));

const weighedBasis = (each: WeighedFabric): Basis => ({
  id: `yarn-weighed:${each.id}`,
  kind: 'measured',
  text: `${each.name} weighs ${each.massG} g and has ${Math.round(each.across)} × ${Math.round(each.up)} stitches: ${(gramsPerStitch(each) * 1000).toFixed(1)} g in 1,000 stitches, its edges taken off`,
  source: null,
});

/** What the yarn in a stitch of a pattern stands on, the strongest of it. */
export const standingOf = (question: YarnQuestion, stitch: Stitch): YarnFrom => {
  if (question.weighed.length > 0) return 'weighed';
  if (loopEstimates(question.gauge).length > 0)
    return stitch === 'stockinette' ? 'loop-length' : 'stitch-ratio';
  return question.weightClass !== null || question.metresPer100g !== null
    ? 'yarn-class'
    : 'nothing';
};

const formsOf = (
  question: YarnQuestion,
  unknowns: Unknowns,
  air: Ratio,
): Readonly<Record<Doubt, Affine>> => {
  const label = metresPrior(question).value;
  const loop = loopPrior(question).value;
  const airForm = unknowns.fresh(air.mean, air.sd);
  const labelled = unknowns.fresh(Math.log(label.median), label.logSd);
  const base = unknowns.fresh(Math.log(loop.median), loop.logSd);
  const own = (of: { readonly median: number; readonly logSd: number }) =>
    unknowns.fresh(Math.log(of.median), of.logSd);
  const stitches = Object.fromEntries(
    STITCHES.map((stitch) => {
      const { mean, sd } = STITCH_RATIOS[stitch];
      return [stitch, sd === 0 ? base : add(base, unknowns.fresh(mean, sd))];
    }),
  ) as Record<Stitch, Affine>;
  return {
    ...stitches,
    air: airForm,
    metres: add(labelled, scale(airForm, -1)),
    edge: own(EDGE),
    seam: own(SEAM),
    tail: own(TAIL_MM),
    drift: unknowns.fresh(0, DRIFT_SD),
    returned: own(RETURNED),
    ball: unknowns.fresh(0, BALL_SD),
    scale: unknowns.fresh(0, 1),
  };
};

const observationsOf = (
  question: YarnQuestion,
  forms: Readonly<Record<Doubt, Affine>>,
  unknowns: Unknowns,
): Observation[] => {
  const shared = unknowns.fresh(0, LOOP_SHARED_SD);
  const loops = loopEstimates(question.gauge).map(
    ({ loop }): Observation => ({
      form: add(forms.stockinette, shared),
      value: Math.log(loop.median),
      sd: Math.hypot(LOOP_OWN_SD, loop.logSd),
    }),
  );
  const weighed = question.weighed.map(
    (each): Observation => ({
      form: add(massForm(forms[each.stitch], forms.metres), unknowns.fresh(0, DRIFT_SD)),
      value: Math.log(gramsPerStitch(each)),
      sd: weighedSd(each),
    }),
  );
  return [...loops, ...weighed];
};

const ratioBasis: Basis = {
  id: 'yarn-stitch-ratios',
  kind: 'published',
  text: 'Other stitches take between as much yarn as stockinette and what one published yarn took (11.28 mm stockinette, 10.55 garter, 16.10 ribbing, 15.67 seed)',
  source: 'singal-2024-data',
};

const airBasis: Basis = {
  id: 'yarn-air',
  kind: 'assumption',
  text: 'Labels count an agreed regain, scales show that of the room, taken to be near 65 % relative humidity',
  source: null,
};

const basesOf = (question: YarnQuestion): Basis[] => [
  ...question.weighed.map(weighedBasis),
  ...loopEstimates(question.gauge).map(({ basis }) => basis),
  loopPrior(question).basis,
  metresPrior(question).basis,
  ratioBasis,
  airBasis,
];

/** The posterior of all that is known; faults where something cannot be. */
export const yarnModel = (question: YarnQuestion): Result<YarnModel> => {
  const faults = yarnFaults(question);
  const air = labelAir(question.fibres);
  if (faults.length > 0 || !air.ok) return fail(...faults, ...(air.ok ? [] : air.faults));
  const unknowns = new Unknowns();
  const forms = formsOf(question, unknowns, air.value);
  const observations = observationsOf(question, forms, unknowns);
  return ok({
    forms,
    post: posterior(unknowns.count, observations),
    bases: basesOf(question),
  });
};
