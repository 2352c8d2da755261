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
import { ANY_YARN, classPitch } from './class-pitch.ts';
import { type Evidence, type FabricModel, type FabricQuestion, pitchIn } from './fabric-model.ts';
import { growthPrior, type PerDirection } from './growth-priors.ts';
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
/** A Gaussian observation needs some noise; this is a thousandth of a percent. */
const EXACT_SD = 1e-5;

const DIRECTIONS = ['width', 'length'] as const;
type Both = Readonly<Record<Direction, Affine>>;
const both = (of: (d: Direction) => Affine): Both => ({ width: of('width'), length: of('length') });

/** Build the model and take in every specimen. */
export const fabricModel = (question: FabricQuestion): FabricModel => {
  const unknowns = new Unknowns();
  const growth = growthPrior(question);
  const fresh = (table: PerDirection): Both =>
    both((d) => unknowns.fresh(table[d].mean, table[d].sd));
  const start = startingPitch(unknowns, question);
  const model = {
    unknowns,
    asKnit: start.pitch,
    driedOverAsKnit: fresh(growth.dried),
    wetOverDried: fresh(growth.wet),
    rewashedOverDried: fresh(growth.rewashed),
    ...patternPitch(unknowns, question, start.pitch),
    evidence: [],
    priors: [...start.bases, ...growth.bases],
  } satisfies FabricModel;
  const pattern = patternEvidence(unknowns, question, model);
  const seen = question.specimens.flatMap((s) => specimenObservations(model, question, s));
  return { ...model, evidence: [...pattern, ...seen] };
};

/** Posterior of the model's unknowns given its evidence and any more. */
export const fabricPosterior = (
  model: FabricModel,
  evidence: readonly Evidence[] = model.evidence,
): Posterior => posterior(model.unknowns.count, evidence);

const startingPitch = (unknowns: Unknowns, question: FabricQuestion) => {
  // A printed gauge says more of this garment than the class of its yarn, which is then left out.
  const start =
    question.patternGauge === null
      ? classPitch(question.weightClass, question.metresPer100g)
      : { ...ANY_YARN, basis: null };
  const width = unknowns.fresh(start.mean, start.sd);
  const shape = unknowns.fresh(-Math.log(PLAIN_RATIO), shapeSd(question));
  return {
    pitch: { width, length: add(width, shape) },
    bases: start.basis === null ? [] : [start.basis],
  };
};

/**
 * SD of the log of height over width of a stitch about Munden's: plain knit keeps to it, other
 * patterns do not, and a printed gauge brings its own. Assumption.
 */
const shapeSd = (question: FabricQuestion): number =>
  question.patternGauge !== null ? 0.5 : question.stitch === 'stockinette' ? 0.09 : 0.2;

/** The printed pitch, or where none is printed what the yarn suggests, as unknown as that is. */
const patternPitch = (unknowns: Unknowns, question: FabricQuestion, asKnit: Both) => {
  const gauge = question.patternGauge;
  if (gauge !== null)
    return {
      patternPitch: {
        width: constant(Math.log(gauge.stitch)),
        length: constant(Math.log(gauge.row)),
      },
      patternState: gauge.state,
    };
  return {
    patternPitch: both((d) => add(asKnit[d], unknowns.fresh(0, UNSWATCHED_SD))),
    patternState: 'asKnit' as const,
  };
};

/** A knitter who follows the pattern lands near its gauge, shifted where she took another needle. */
const patternEvidence = (
  unknowns: Unknowns,
  question: FabricQuestion,
  model: FabricModel,
): Evidence[] => {
  const gauge = question.patternGauge;
  if (gauge === null) return [];
  const sd = UNSWATCHED_SD;
  const [width, length] = unknowns.freshPair([0, 0], [sd, sd], HAND_CORRELATION);
  const hand: Both = { width, length };
  const shift = needleShift(question);
  const doubt = unknowns.fresh(0, Math.abs(shift) / 2);
  const basis: Basis = {
    id: 'pattern-gauge',
    kind: 'from-pattern',
    text: `The pattern's gauge, which a knitter who has not swatched meets within about ±${(sd * 164.5).toFixed(0)} % (common practice, no source)`,
    source: null,
  };
  return DIRECTIONS.map((d) => ({
    form: add(pitchIn(model, d, gauge.state), scale(hand[d], -1), scale(doubt, -1)),
    value: Math.log(d === 'width' ? gauge.stitch : gauge.row) + shift,
    sd: EXACT_SD,
    basis,
  }));
};

const needleShift = (question: FabricQuestion): number =>
  question.needle === null || question.patternNeedle === null
    ? 0
    : NEEDLE_POWER * Math.log(question.needle / question.patternNeedle);
