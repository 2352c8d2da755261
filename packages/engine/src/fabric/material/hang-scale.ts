import { type Affine, add, meanOf, posterior, scale, sdOf, Unknowns } from '../../stats/index.ts';
import { lineLoad, MARK_SD_MM, OTHER_LOAD_SD } from '../give.ts';
import type { Direction, HangReading, Specimen } from '../specimen.ts';
import { loadAt, type StretchLaw, stiffnessAt } from '../stretch/law.ts';
import { reachingLaw } from './scale-law.ts';

export interface HungReading {
  readonly specimen: Specimen;
  readonly reading: HangReading;
}

/** Readings of strips that a weight made longer; one that did not move tells nothing of a scale. */
export const hungReadings = (specimens: readonly Specimen[]): HungReading[] =>
  specimens.flatMap((specimen) =>
    specimen.readings
      .filter((r): r is HangReading => r.kind === 'hang' && r.after > r.before)
      .map((reading) => ({ specimen, reading })),
  );

/** A factor: middle, and SD of its log. */
export interface Scale {
  readonly factor: number;
  readonly logSd: number;
}

/** What a fabric does beside its law: strain under small loads, and the strain that it ends at. */
export interface HangScale {
  readonly give: Scale;
  readonly limit: Scale;
}

type PerDirection<T> = Readonly<Record<Direction, T>>;

export interface ScaleQuestion {
  readonly hung: readonly HungReading[];
  /** Prior SDs of the logs of give and limit. */
  readonly giveLogSd: PerDirection<number>;
  readonly limitLogSd: PerDirection<number>;
  /** Law of the strip in the wet or the dry state before any reading. */
  readonly lawOf: (direction: Direction, wet: boolean) => StretchLaw;
  /** SD of the log of what wetness does. */
  readonly wetLogSd: number;
  /** State that is asked for. */
  readonly wet: boolean;
}

/**
 * A yarn that gives more in width gives more in length too, loosely: of the eight log ratios of two
 * yarns in the load-extension table (four stitches, two directions, at 0.02 N/mm) the correlation about
 * 0 is 0.25.
 */
export const GIVE_CORRELATION = 0.25;

/**
 * How much further this fabric gives than the law says, from the knitter's own hung strips: normal
 * priors, normal readings in logs. A strip hung wet tells of the dry fabric too, less surely; one that
 * was pulled well into its stiffening tells of its limit.
 */
export const hangScale = (question: ScaleQuestion): PerDirection<HangScale> => {
  const unknowns = new Unknowns();
  const sds = question.giveLogSd;
  const [width, length] = unknowns.freshPair([0, 0], [sds.width, sds.length], GIVE_CORRELATION);
  const give: PerDirection<Affine> = { width, length };
  const limit: PerDirection<Affine> = {
    width: unknowns.fresh(0, question.limitLogSd.width),
    length: unknowns.fresh(0, question.limitLogSd.length),
  };
  const water = unknowns.fresh(0, question.wetLogSd);
  const inState = (d: Direction, wet: boolean) => (wet ? add(give[d], water) : give[d]);
  const post = posterior(
    unknowns.count,
    question.hung.map(({ reading }) => {
      const { stiffening, value, sd } = observed(question, reading);
      const form = inState(reading.direction, reading.state === 'wet');
      return { form: add(form, scale(limit[reading.direction], stiffening)), value, sd };
    }),
  );
  const scaleOf = (form: Affine): Scale => ({
    factor: Math.exp(meanOf(post, form)),
    logSd: sdOf(post, form),
  });
  const both = (d: Direction): HangScale => ({
    give: scaleOf(inState(d, question.wet)),
    limit: scaleOf(limit[d]),
  });
  return { width: both('width'), length: both('length') };
};

/** A strain nearer to the limit than this says above all that the limit lies further out. */
const MOST_OF_LIMIT = 0.8;

/**
 * Log of the load that the law has at the strain seen, over the load hung: what give is, plus
 * `stiffening` times the log factor of the limit. Straightened at the law's limit, or where that is too
 * near at the limit that leaves the strain at `MOST_OF_LIMIT` of it.
 */
const observed = ({ lawOf }: ScaleQuestion, reading: HangReading) => {
  const strain = reading.after / reading.before - 1;
  const nominal = lawOf(reading.direction, reading.state === 'wet');
  const further = Math.max(1, strain / (MOST_OF_LIMIT * nominal.limit));
  const law = reachingLaw(nominal, further);
  const load = loadAt(law, strain);
  const steepness = (stiffnessAt(law, strain) * strain) / load;
  const stiffening = ((stiffnessAt(law, strain) - law.slope) * strain) / load;
  const hung = lineLoad(reading.mass, reading.clipped);
  const error = (MARK_SD_MM * Math.SQRT2) / (reading.after - reading.before);
  return {
    stiffening,
    value: Math.log(load / hung) + stiffening * Math.log(further),
    sd: steepness * Math.hypot(error, OTHER_LOAD_SD),
  };
};
