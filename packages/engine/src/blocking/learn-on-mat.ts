import type { MaterialDoubt } from '../fabric/index.ts';
import { meanOf, type Observation, posterior, sdOf, Unknowns } from '../stats/index.ts';
import { fail, ok } from '../units/index.ts';
import { type Evidence, evidenceOf, leftOut, leftOutSd, observed } from './evidence-on-mat.ts';
import { type MatModel, matModel, stoppedOnMat } from './forward-on-mat.ts';
import { goingsOn } from './goings-on.ts';
import { learnedNotices } from './learned-notices.ts';
import { learnedChange } from './learned-words.ts';
import { inMatFaults, readingFaults } from './mat-faults.ts';
import type { Learned, LearnedWhat, LearnOnMat, MatReading, ReadAgain } from './mat-types.ts';
import { otherPiece, type PieceFactors } from './other-piece.ts';
import type { FabricOnMat, MeanSd, PieceToBlock } from './types.ts';

const WHAT = ['stiffness', 'rest-width', 'rest-length', 'draw-in'] as const;
const NONE = WHAT.map(() => 0);

/**
 * Steps of the finite differences, in standard deviations before: well above what a solve leaves open.
 * Draw-in is stepped down, as it may be near the most that a fabric can.
 */
const STEPS = [0.5, 0.5, 0.5, -0.5] as const;
/** Slopes are taken anew after a step longer than this, in the same. */
const FAR = 0.5;
/** The unknowns have settled when a round moves none by more than this, in standard deviations before. */
const SETTLED = 0.05;
const MOST_ROUNDS = 12;
/** A reading this many standard deviations from what was foretold is taken for a slip of the tape. */
const SLIP = 5;

/** SDs of the logs of the factors, as WHAT has them. */
const sdsOf = ({ fabric: { doubt }, restLogSd }: PieceToBlock): number[] => [
  Math.hypot(doubt.give.width, doubt.give.length) / Math.SQRT2,
  restLogSd.width,
  restLogSd.length,
  doubt.coupling,
];

const factorsAt = (z: readonly number[], sds: readonly number[]): PieceFactors => {
  const [stiffness, width, length, drawIn] = z.map((each, k) => Math.exp(each * sds[k]!));
  return { stiffness: stiffness!, width: width!, length: length!, drawIn: drawIn! };
};

/** Everything foretold at z, and its slopes by each unknown. */
interface Linear {
  readonly values: readonly number[];
  readonly slopes: readonly (readonly number[])[];
}

/** A reading that the model can be asked for: how many were in. */
interface Asked {
  readonly model: MatModel;
  readonly evidence: readonly Evidence[];
  readonly steps: readonly number[];
  readonly stepOf: (evidence: Evidence) => number;
  readonly sds: readonly number[];
}

const askedOf = (
  model: MatModel,
  readings: readonly MatReading[],
  sds: readonly number[],
): Asked => {
  const evidence = evidenceOf(readings, model.rulers);
  const step = ({ reading }: Evidence) => readings[reading]!.afterStep;
  const steps = [...new Set(evidence.map(step))].sort((a, b) => a - b);
  return { model, evidence, steps, stepOf: (each) => steps.indexOf(step(each)), sds };
};

const valuesAt = ({ model, evidence, steps, stepOf, sds }: Asked, z: readonly number[]) => {
  const foretold = model.foretell(factorsAt(z, sds), steps);
  return foretold === null ? null : evidence.map((each) => each.of(foretold[stepOf(each)]!));
};

/** An unknown that is known, or that no piece of this kind could have, has no slope. */
const linearAt = (asked: Asked, z: readonly number[]): Linear | null => {
  const values = valuesAt(asked, z);
  if (values === null) return null;
  const slopes = values.map(() => [...NONE]);
  for (const [k, step] of STEPS.entries()) {
    if (asked.sds[k] === 0) continue;
    const moved = valuesAt(
      asked,
      z.map((each, i) => (i === k ? each + step : each)),
    );
    if (moved === null) return null;
    moved.forEach((value, i) => {
      slopes[i]![k] = (value - values[i]!) / step;
    });
  }
  return { values, slopes };
};

interface Round {
  readonly z: readonly number[];
  readonly sds: readonly number[];
  readonly taken: readonly boolean[];
}

/** Whether each is near enough to what was foretold of it before anything was read. */
const isTaken = (evidence: readonly Evidence[], { values, slopes }: Linear): boolean[] =>
  evidence.map(({ value, sd }, i) => {
    const spread = Math.hypot(sd, ...slopes[i]!);
    return Math.abs(value - values[i]!) <= SLIP * spread;
  });

/** The closed-form update about z. */
const updated = (
  { evidence, model: { rulers } }: Asked,
  { values, slopes }: Linear,
  z: readonly number[],
  taken: readonly boolean[],
): Round => {
  const unknowns = new Unknowns();
  const forms = NONE.map(() => unknowns.fresh(0, 1));
  const extra = leftOut(rulers, unknowns);
  const observations = evidence.flatMap((each, i): Observation[] =>
    taken[i] ? [observed(each, values[i]!, slopes[i]!, z, extra)] : [],
  );
  const post = posterior(unknowns.count, observations);
  return {
    z: forms.map((form) => meanOf(post, form)),
    sds: forms.map((form) => sdOf(post, form)),
    taken,
  };
};

interface Fitted extends Round {
  readonly first: Linear;
  /** What is foretold of everything at the end. */
  readonly now: readonly number[];
  readonly iterations: number;
  readonly residual: number;
}

const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((each, k) => Math.abs(each - b[k]!)));

/** How badly z fits what was taken and what was thought before, as a sum of squares. */
const misfit = (
  { evidence, model: { rulers } }: Asked,
  values: readonly number[],
  z: readonly number[],
  taken: readonly boolean[],
): number =>
  evidence.reduce(
    (sum, { value, sd, ruler }, i) =>
      taken[i] ? sum + (value - values[i]!) ** 2 / (sd ** 2 + leftOutSd(rulers[ruler]) ** 2) : sum,
    z.reduce((sum, each) => sum + each * each, 0),
  );

/**
 * Gauss–Newton with steps that are halved until they fit better; null where stopped. Slopes are kept
 * while steps are short, as they cost four times what values do.
 */
const fitted = (asked: Asked): Fitted | null => {
  const first = linearAt(asked, NONE);
  if (first === null) return null;
  const taken = isTaken(asked.evidence, first);
  let [linear, z, fresh]: [Linear, readonly number[], boolean] = [first, NONE, true];
  let round = updated(asked, linear, z, taken);
  // Slopes where it began: so nothing that is read can add to the doubt.
  const { sds } = round;
  let residual = apart(round.z, z);
  let [iterations, share] = [1, 1];
  for (; residual > SETTLED && iterations < MOST_ROUNDS; iterations++) {
    const next = z.map((each, k) => each + share * (round.z[k]! - each));
    const values = valuesAt(asked, next);
    if (values === null) return null;
    if (misfit(asked, values, next, taken) < misfit(asked, linear.values, z, taken)) {
      const anew = apart(next, z) > FAR ? linearAt(asked, next) : { ...linear, values };
      if (anew === null) return null;
      [fresh, linear, z, share] = [anew.slopes !== linear.slopes, anew, next, 1];
    } else if (fresh || share > 0.25) share /= 2;
    else {
      const anew = linearAt(asked, z);
      if (anew === null) return null;
      [fresh, linear, share] = [true, anew, 1];
    }
    round = updated(asked, linear, z, taken);
    residual = share * apart(round.z, z);
  }
  return { z, sds, taken, first, now: linear.values, iterations, residual };
};

const scaledDoubt = (doubt: MaterialDoubt, give: number, coupling: number): MaterialDoubt => ({
  ...doubt,
  give: { width: doubt.give.width * give, length: doubt.give.length * give },
  coupling: doubt.coupling * coupling,
});

const withDoubt = (fabric: FabricOnMat, { sds }: Round): FabricOnMat => ({
  ...fabric,
  doubt: scaledDoubt(fabric.doubt, sds[0]!, sds[3]!),
});

/** The piece at the middle of what is now thought, with the doubt that is left. */
const learnedPiece = (piece: PieceToBlock, round: Round, sds: readonly number[]): PieceToBlock => {
  const other = otherPiece(piece, factorsAt(round.z, sds));
  return {
    ...other,
    zones: other.zones.map((zone) =>
      zone.fabric === undefined ? zone : { ...zone, fabric: withDoubt(zone.fabric, round) },
    ),
    fabric: withDoubt(other.fabric, round),
    restLogSd: {
      width: piece.restLogSd.width * round.sds[1]!,
      length: piece.restLogSd.length * round.sds[2]!,
    },
  };
};

const changesOf = (z: readonly number[], shrunk: readonly number[], sds: readonly number[]) =>
  WHAT.map((what: LearnedWhat, k) => {
    const before: MeanSd = { mean: 0, sd: sds[k]! };
    return learnedChange(what, before, { mean: z[k]! * sds[k]!, sd: shrunk[k]! * sds[k]! });
  });

const readAgain = (
  { evidence, model: { rulers } }: Asked,
  { values }: Linear,
  now: readonly number[],
): ReadAgain[] =>
  evidence.flatMap(({ reading, ruler, value }, i) =>
    ruler < 0
      ? []
      : [
          {
            reading,
            landmark: rulers[ruler]!.dimension.landmark,
            measuredMm: value,
            foretoldMm: values[i]!,
            nowMm: now[i]!,
          },
        ],
  );

const nothingLearned = (piece: PieceToBlock): Learned => ({
  piece,
  changes: changesOf(
    NONE,
    NONE.map(() => 1),
    sdsOf(piece),
  ),
  readAgain: [],
  notices: [],
  fit: { iterations: 0, residual: 0, converged: true, evaluations: 0 },
});

/**
 * What hand and tape tell of the fabric while its pins go in. Stiffness, size at rest and draw-in are
 * log-normal, with the doubt of the piece; lengths and pulls are foretold by laying the piece with what
 * was in at the time, and all readings are taken together (Gauss–Newton on a linear normal model), so
 * their order does not matter. Fabric that is held by its pins tells its size and its draw-in; only a
 * pull at its limit tells stiffness, by what hands are taken to put on a pin. The doubt that is left is
 * kept for each unknown by itself. A reading far beyond all doubt is not taken, and named. Faults name a
 * dimension the piece has not, a length or a count that is none, or that a hook stopped it.
 */
export const learnOnMat: LearnOnMat = (piece, inMat, readings, hooks = {}) => {
  const faults = inMatFaults(piece, inMat);
  if (faults.length === 0) faults.push(...readingFaults(piece, inMat, readings));
  if (faults.length > 0) return fail(...faults);
  const telling = readings.some(({ felt, measured }) => felt !== 'right' || measured.length > 0);
  if (!telling) return ok(nothingLearned(piece));
  const going = goingsOn(
    hooks.onStep === undefined ? {} : { onStep: hooks.onStep },
    piece.name,
    0,
    1,
  );
  const made = matModel(piece, inMat, going.goOn);
  if (!made.ok) return made;
  const sds = sdsOf(piece);
  const asked = askedOf(made.value, readings, sds);
  const fit = fitted(asked);
  if (fit === null) return stoppedOnMat();
  const { first, now, iterations, residual } = fit;
  const changes = changesOf(fit.z, fit.sds, sds);
  return ok({
    piece: learnedPiece(piece, fit, sds),
    changes,
    readAgain: readAgain(asked, first, now),
    notices: learnedNotices(asked.evidence, made.value.rulers, {
      ...first,
      taken: fit.taken,
      changes,
    }),
    fit: {
      iterations,
      residual,
      converged: residual <= SETTLED,
      evaluations: made.value.effort.spent,
    },
  });
};
