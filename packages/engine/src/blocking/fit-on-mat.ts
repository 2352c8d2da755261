import { meanOf, type Observation, posterior, sdOf, Unknowns } from '../stats/index.ts';
import { compassSearch, type Found } from './compass.ts';
import { type Evidence, evidenceOf, leftOut, leftOutSd, observed } from './evidence-on-mat.ts';
import type { MatModel } from './forward-on-mat.ts';
import type { MatReading } from './mat-types.ts';
import type { PieceFactors } from './other-piece.ts';

export const WHAT = ['stiffness', 'rest-width', 'rest-length', 'draw-in'] as const;
export const NONE = WHAT.map(() => 0);

/**
 * Steps of the finite differences, in standard deviations before: well above what a solve leaves open.
 * Draw-in is stepped down, as it may be near the most that a fabric can.
 */
const STEPS = [0.5, 0.5, 0.5, -0.5] as const;
/** Slopes are taken anew after a step longer than this, in the same. */
const FAR = 0.5;
/** The unknowns have settled when a round moves none by more than this, in standard deviations before. */
export const SETTLED = 0.05;
const MOST_ROUNDS = 12;
/** A reading this many standard deviations from what was foretold is taken for a slip of the tape. */
const SLIP = 5;

export const factorsAt = (z: readonly number[], sds: readonly number[]): PieceFactors => {
  const [stiffness, width, length, drawIn] = z.map((each, k) => Math.exp(each * sds[k]!));
  return { stiffness: stiffness!, width: width!, length: length!, drawIn: drawIn! };
};

/** Everything foretold at z, and its slopes by each unknown. */
export interface Linear {
  readonly values: readonly number[];
  readonly slopes: readonly (readonly number[])[];
}

/** A reading that the model can be asked for: how many were in. */
export interface Asked {
  readonly model: MatModel;
  readonly evidence: readonly Evidence[];
  readonly steps: readonly number[];
  readonly stepOf: (evidence: Evidence) => number;
  readonly sds: readonly number[];
}

export const askedOf = (
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

export interface Round {
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

export interface Fitted extends Round {
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

/** Below this share of its step Gauss–Newton is at a kink, as where a pull goes slack: it is left to a search. */
const STUCK = 0.2;
/** That search, in standard deviations before; a fourth of its first step is SETTLED. */
const SEARCH = { step: 4 * SETTLED, settled: SETTLED, most: 24 };

type Descent = Pick<Fitted, 'z' | 'now' | 'iterations' | 'residual'>;

/**
 * Gauss–Newton with steps that are halved until they fit better; null where stopped. Slopes are kept
 * while steps are short, as they cost four times what values do. `residual` is the whole of the step
 * that it would take next, however short the one that fits better.
 */
const descended = (
  asked: Asked,
  first: Linear,
  opening: Round,
  taken: readonly boolean[],
): Descent | null => {
  let [linear, z, fresh]: [Linear, readonly number[], boolean] = [first, NONE, true];
  let round = opening;
  let residual = apart(round.z, z);
  let [iterations, share] = [1, 1];
  for (; residual > SETTLED && iterations < MOST_ROUNDS && share > STUCK; iterations++) {
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
    residual = apart(round.z, z);
  }
  return { z, now: linear.values, iterations, residual };
};

/** Goes on from where slopes did not settle; null where stopped. */
const searched = (asked: Asked, taken: readonly boolean[], from: Descent): Descent | null => {
  const found = (z: readonly number[], now: readonly number[]): Found<readonly number[]> => ({
    z,
    score: misfit(asked, now, z, taken),
    found: now,
  });
  const at = (z: readonly number[]) => {
    const now = valuesAt(asked, z);
    return now === null ? null : found(z, now);
  };
  const free = WHAT.flatMap((_, k) => (asked.sds[k] === 0 ? [] : [k]));
  const end = compassSearch(found(from.z, from.now), at, { ...SEARCH, free });
  if (end === null) return null;
  const { z, found: now, residual } = end;
  return { z, now, residual, iterations: from.iterations + end.iterations };
};

/** The middle of what is thought after the readings, first by slopes; null where stopped. */
export const fitted = (asked: Asked): Fitted | null => {
  const first = linearAt(asked, NONE);
  if (first === null) return null;
  const taken = isTaken(asked.evidence, first);
  const opening = updated(asked, first, NONE, taken);
  let end = descended(asked, first, opening, taken);
  if (end !== null && end.residual > SETTLED) end = searched(asked, taken, end);
  // Slopes where it began: so nothing that is read can add to the doubt.
  return end === null ? null : { ...end, sds: opening.sds, taken, first };
};
