import { fail, ok, type Result } from '../units/index.ts';
import { TOLERANCE } from './assumptions.ts';
import { basesOf } from './bases.ts';
import { type DrawnDryings, drawDryings } from './draw-dryings.ts';
import { sure } from './falling-root.ts';
import { dryingFaults } from './faults.ts';
import { massAfter, wholeHours } from './garment-course.ts';
import { allPlaces, type Imagined, lastHours } from './imagined.ts';
import { clockMarks } from './marks.ts';
import { noticesOf } from './notices.ts';
import { toClock, toModel } from './pace.ts';
import { hoursUntil } from './place-course.ts';
import { airPressure, wetBulb } from './psychrometrics.ts';
import { touchWorth } from './touch.ts';
import type { DryingForecast, DryingOptions, DryingQuestion, DryNow, Spread } from './types.ts';
import { weightedChance, weightedSpread } from './weighted-spread.ts';

const stateOf = (chance: number): Pick<DryNow, 'state' | 'text'> => {
  if (chance >= 0.9) return { state: 'dry', text: 'It is dry.' };
  if (chance <= 0.5) return { state: 'not-dry', text: 'It is not dry yet.' };
  return {
    state: 'unsure',
    text: 'It is close. Weigh it again in an hour: no change means it is dry.',
  };
};

const nowOf = (
  question: DryingQuestion,
  dry: Float64Array,
  weights: Float64Array,
): DryNow | null => {
  if (question.weighings.length === 0) return null;
  const hours = lastHours(question);
  const chance = weightedChance(dry, weights, (each) => each <= hours);
  return { hours, chance, ...stateOf(chance) };
};

/** Points of the drying curve, evenly in time. */
const COURSE = 24;

/** Hours until this share of the water is gone; never less than what counts as dry is left. */
const gone = (garment: Imagined, share: number): number => {
  if (garment.excess <= TOLERANCE.whole) return 0;
  const left = Math.max(TOLERANCE.whole, garment.excess * (1 - share));
  return toClock(garment, sure(wholeHours(garment, left)));
};

/**
 * Range of the time to dry, from a question in grams, °C, percent and m²; what is impossible is a
 * fault. Draws drying courses from everything unknown (see `assumptions.ts`), weighs them by the
 * weighings, and reads 5, 50 and 95 % points. Pure: the same question and seed give the same bytes;
 * the order of the weighings does not matter beyond rounding. Water is not led from place to place,
 * and the air is taken as steady up to
 * the last weighing, as uncertain after it.
 */
export const forecastDrying = (
  question: DryingQuestion,
  options: DryingOptions = {},
): Result<DryingForecast> => {
  const faults = dryingFaults(question);
  if (faults.length > 0) return fail(...faults);
  const asked = { seed: options.seed ?? 1, draws: options.draws ?? 2000 };
  return ok(tell(question, drawDryings(question, asked), asked));
};

const tell = (
  question: DryingQuestion,
  { learnt, garments, dry }: DrawnDryings,
  asked: Required<DryingOptions>,
): DryingForecast => {
  const { weights } = learnt;
  const column = (of: (garment: Imagined) => number) => Float64Array.from(garments, of);
  const spread = (of: (garment: Imagined) => number): Spread => weightedSpread(column(of), weights);
  const dryHours = weightedSpread(dry, weights);
  const now = nowOf(question, dry, weights);
  const { air, lying } = question;
  return {
    ...asked,
    effectiveDraws: learnt.effectiveDraws,
    waterG: spread(({ excess, fibreG }) => excess * fibreG),
    dryMassG: spread(({ dryMassG }) => dryMassG),
    dryAtG: spread((garment) => garment.dryMassG + TOLERANCE.whole * garment.fibreG).p50,
    rateG: spread(({ rateG }) => rateG),
    dryHours,
    tolerance: TOLERANCE,
    places: allPlaces(question).map(({ name, share }, i) => ({
      name,
      share,
      dryHours: spread((garment) =>
        toClock(garment, hoursUntil(garment.places[i]!.course, TOLERANCE.place)),
      ),
    })),
    marks: clockMarks({
      thirdGone: spread((garment) => gone(garment, 1 / 3)),
      halfGone: spread((garment) => gone(garment, 1 / 2)),
      dryHours,
      pinned: lying.pinned,
      now: now?.hours ?? 0,
      isDry: now?.state === 'dry' || dryHours.p95 === 0,
    }),
    course: Array.from({ length: COURSE + 1 }, (_, i) => {
      const hours = (i / COURSE) * dryHours.p95;
      return { hours, massG: spread((garment) => massAfter(garment, toModel(garment, hours))) };
    }),
    now,
    touch: touchWorth(question, garments, weights),
    wetBulb: wetBulb(air.temperature, air.humidityPercent / 100, airPressure(air.altitudeM ?? 0)),
    fit: learnt.fit,
    notices: noticesOf(question, learnt, dryHours),
    bases: basesOf(question),
  };
};
