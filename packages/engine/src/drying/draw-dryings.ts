import { randomSource } from '../stats/index.ts';
import { MODEL_MISS, SCALE_SD, TOLERANCE } from './assumptions.ts';
import { dryAfter, massAfter } from './garment-course.ts';
import { type Imagine, type Imagined, imaginer, UNKNOWNS } from './imagined.ts';
import { believe, type Learnt, learn, type Misses } from './learn.ts';
import { toClock } from './pace.ts';
import type { DryingOptions, DryingQuestion } from './types.ts';

/** SD of one weighing, g: the scale, and what the model misses of the water gone by then. */
export const weighingSd = (gone: number, scaleSd: number): number =>
  Math.hypot(scaleSd, MODEL_MISS * Math.max(0, gone));

const missesOf = (question: DryingQuestion, imagine: Imagine): Misses => {
  const { weighings, scaleSd = SCALE_SD } = question;
  const start = massAfter(imagine(new Float64Array(UNKNOWNS.length)), 0);
  const sds = weighings.map(({ mass }) => weighingSd(start - mass, scaleSd));
  return (z) => {
    const garment = imagine(z);
    return Float64Array.from(
      weighings,
      ({ hours, mass }, i) => (mass - massAfter(garment, hours)) / sds[i]!,
    );
  };
};

const learnFrom = (
  question: DryingQuestion,
  imagine: Imagine,
  options: Required<DryingOptions>,
) => {
  const source = randomSource(options.seed);
  const asked = { unknowns: UNKNOWNS.length, draws: options.draws, source };
  if (question.weighings.length === 0) return believe(asked);
  return learn(missesOf(question, imagine), asked);
};

/** Imagined dryings with their weights, and the hours until each is dry. */
export interface DrawnDryings {
  readonly learnt: Learnt;
  readonly garments: readonly Imagined[];
  readonly dry: Float64Array;
}

/** Draws dryings of a question that has no faults. */
export const drawDryings = (
  question: DryingQuestion,
  options: Required<DryingOptions>,
): DrawnDryings => {
  const imagine = imaginer(question);
  const learnt = learnFrom(question, imagine, options);
  const garments = learnt.rows.map(imagine);
  const dry = Float64Array.from(garments, (garment) =>
    toClock(garment, dryAfter(garment, TOLERANCE)),
  );
  return { learnt, garments, dry };
};
