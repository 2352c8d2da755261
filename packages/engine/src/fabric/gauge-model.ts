import {
  type Affine,
  add,
  constant,
  type Posterior,
  posterior,
  scale,
  Unknowns,
} from '../stats/index.ts';
import type { Basis } from './basis.ts';
import { classPitch } from './class-pitch.ts';
import type { Evidence, FabricModel, FabricQuestion, GrowthTerm } from './fabric-model.ts';
import { growthPrior } from './growth-priors.ts';
import type { Direction } from './specimen.ts';
import { specimenObservations } from './specimen-observations.ts';

/** A knitter who has not swatched differs from the pattern's gauge by this. Common practice, no source. */
export const UNSWATCHED_SD = 0.06;
/** Tight hands are tight both ways: correlation of width and length. Assumption. */
export const HAND_CORRELATION = 0.5;
/** Pitch goes with the needle to this power: a size is ½ to 1 stitch per 10 cm. Common practice. */
export const NEEDLE_POWER = 0.3;
/** Stitch width over row height, dry-relaxed plain knit: R = kc/kw = 5.0/3.8 (Munden 1959). */
const PLAIN_RATIO = 5.0 / 3.8;
type Both = Readonly<Record<Direction, Affine>>;
const both = (of: (d: Direction) => Affine): Both => ({ width: of('width'), length: of('length') });

/** A change that a tape on the garment has shown to be none of the usual: any that wool can do. Assumption. */
export const SHOWN_SD = 0.15;

/**
 * Build the model and take in every specimen. `shown`: changes whose usual size the garment itself has
 * contradicted, so that only what was measured speaks of them.
 */
export const fabricModel = (
  question: FabricQuestion,
  shown: ReadonlySet<GrowthTerm> = new Set(),
): FabricModel => {
  const unknowns = new Unknowns();
  const growth = growthPrior(question);
  const fresh = (name: 'dried' | 'wet' | 'rewashed'): Both =>
    both((d) => {
      const { mean, sd } = growth[name][d];
      return unknowns.fresh(mean, shown.has(`${name} ${d}`) ? Math.max(sd, SHOWN_SD) : sd);
    });
  const driedOverAsKnit = fresh('dried');
  const start =
    question.patternGauge === null
      ? startFromYarn(unknowns, question)
      : startFromPattern(unknowns, question, question.patternGauge, driedOverAsKnit);
  const model: FabricModel = {
    unknowns,
    ...start,
    driedOverAsKnit,
    wetOverDried: fresh('wet'),
    rewashedOverDried: fresh('rewashed'),
    evidence: [],
    priors: [start.basis, ...growth.bases],
  };
  const evidence = question.specimens.flatMap((s) => specimenObservations(model, question, s));
  return { ...model, evidence };
};

/** Posterior of the model's unknowns given its evidence and any more. */
export const fabricPosterior = (
  model: FabricModel,
  evidence: readonly Evidence[] = model.evidence,
): Posterior => posterior(model.unknowns.count, evidence);

/** Where the fabric starts before it is measured, and the pitch that the pattern counts by. */
interface Start {
  readonly asKnit: Both;
  readonly patternPitch: Both;
  readonly basis: Basis;
}

/** Without a printed gauge the yarn's class is all there is, and the pattern's pitch is as unknown. */
const startFromYarn = (unknowns: Unknowns, question: FabricQuestion): Start => {
  const start = classPitch(question.weightClass, question.metresPer100g);
  const width = unknowns.fresh(start.mean, start.sd);
  const shape = unknowns.fresh(-Math.log(PLAIN_RATIO), shapeSd(question));
  const asKnit: Both = { width, length: add(width, shape) };
  const patternPitch = both((d) => add(asKnit[d], unknowns.fresh(0, UNSWATCHED_SD)));
  return { asKnit, patternPitch, basis: start.basis };
};

/** Plain knit keeps to Munden's ratio of height to width, other patterns do not. Assumption. */
const shapeSd = (question: FabricQuestion): number =>
  question.stitch === 'stockinette' ? 0.09 : 0.2;

/** A knitter who follows the pattern lands near its gauge, shifted where she took another needle. */
const startFromPattern = (
  unknowns: Unknowns,
  question: FabricQuestion,
  gauge: NonNullable<FabricQuestion['patternGauge']>,
  driedOverAsKnit: Both,
): Start => {
  const sd = UNSWATCHED_SD;
  const [width, length] = unknowns.freshPair([0, 0], [sd, sd], HAND_CORRELATION);
  const hand: Both = { width, length };
  const shift = needleShift(question);
  const needle = unknowns.fresh(shift, Math.abs(shift) / 2);
  const printed = constant(Math.log(gauge.stitch));
  const patternPitch: Both = {
    width: printed,
    length:
      gauge.row === null
        ? add(printed, unknowns.fresh(-Math.log(PLAIN_RATIO), shapeSd(question)))
        : constant(Math.log(gauge.row)),
  };
  const met = both((d) => add(patternPitch[d], hand[d], needle));
  const asKnit =
    gauge.state === 'asKnit' ? met : both((d) => add(met[d], scale(driedOverAsKnit[d], -1)));
  return { asKnit, patternPitch, basis: patternBasis(question, gauge.row === null, shift) };
};

const patternBasis = (question: FabricQuestion, noRows: boolean, shift: number): Basis => ({
  id: 'pattern-gauge',
  kind: 'from-pattern',
  text: `The pattern's gauge, which a knitter who has not swatched meets within about ±${(UNSWATCHED_SD * 164.5).toFixed(0)} %${shift === 0 ? '' : `, moved by ${(100 * Math.expm1(shift)).toFixed(1)} % for the other needle`} (common practice, no source)${noRows ? rowsOf(question) : ''}`,
  source: null,
});

const rowsOf = (question: FabricQuestion): string =>
  `. It gives no rows: ${PLAIN_RATIO.toFixed(2)} to a stitch are taken, as in plain knit at rest (Munden 1959), give or take ${(shapeSd(question) * 164.5).toFixed(0)} % (assumption)`;

const needleShift = (question: FabricQuestion): number =>
  question.needle === null || question.patternNeedle === null
    ? 0
    : NEEDLE_POWER * Math.log(question.needle / question.patternNeedle);
