import {
  normalColumns,
  quantilesInPlace,
  type Spread,
  spreadOfLogNormal,
} from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import { basesOf } from './bases.ts';
import { type Course, type Run, runCourse } from './course.ts';
import { criticalSteps } from './critical.ts';
import { dateAdvice } from './date-advice.ts';
import { DoneDays } from './done-days.ts';
import { paceFault, paceFaults } from './faults.ts';
import { type Hand, handOf, hoursOf, paceOf } from './hand.ts';
import { dayNumber } from './iso-day.ts';
import { courseOf, workHours } from './steps.ts';
import type { Milestone, PaceForecast, PaceOptions, PaceQuestion } from './types.ts';
import { agendaOf } from './week.ts';
import { noticesOf, sentenceOf } from './words.ts';
import { yarnAdvice } from './yarn-advice.ts';

const DEFAULT_SEED = 1;
const DEFAULT_DRAWS = 10_000;
const MOST_DRAWS = 1_000_000;

const spread = (values: Float64Array): Spread => {
  const [p5, p50, p95] = quantilesInPlace(values, [0.05, 0.5, 0.95]);
  return { p5: p5!, p50: p50!, p95: p95! };
};

const milestone = (id: string, name: string, days: DoneDays): Milestone => ({
  id,
  name,
  early: days.at(0.05),
  middle: days.at(0.5),
  late: days.at(0.95),
});

/** The end of every step that takes time, and of it all. */
const milestonesOf = (course: Course, run: Run, first: number): Milestone[] => [
  ...course.steps.flatMap(({ id, name, hours }, k) =>
    hours.some((each) => each > 0) ? [milestone(id, name, new DoneDays(run.ends[k]!, first))] : [],
  ),
  milestone('done', 'done', new DoneDays(run.done, first)),
];

const paceSpreads = (hand: Hand): PaceForecast['pace'] => ({
  plain: spreadOfLogNormal(paceOf(hand, 'plain')),
  worked: spreadOfLogNormal(paceOf(hand, 'worked')),
});

const drawFaults = (draws: number) =>
  Number.isInteger(draws) && draws >= 1 && draws <= MOST_DRAWS
    ? []
    : [
        paceFault(
          'draws',
          'draws',
          draws,
          'this is no number of draws',
          `Give a whole number from 1 to ${MOST_DRAWS}.`,
        ),
      ];

/**
 * When the work is done: chance by day, with what it hangs on. Pace is the posterior of this knitter's
 * timed sittings, closed form; days follow from the hours of the week by sampling. Days are ISO days, the
 * first is handed in. Hours for byPart are exact log-normals. Same question, seed and draws, same bytes.
 * Faults of all that was given.
 */
export const paceForecast = (
  question: PaceQuestion,
  { seed = DEFAULT_SEED, draws = DEFAULT_DRAWS }: PaceOptions = {},
): Result<PaceForecast> => {
  const faults = [...paceFaults(question), ...drawFaults(draws)];
  if (faults.length > 0) return fail(...faults);
  const hand = handOf(question.log);
  const course = courseOf(question, hand, normalColumns(seed, draws));
  return ok({ seed, draws, ...forecastOf(question, hand, course) });
};

const forecastOf = (
  question: PaceQuestion,
  hand: Hand,
  course: Course,
): Omit<PaceForecast, 'seed' | 'draws'> => {
  const first = dayNumber(question.from)!;
  const last = question.by === null ? null : dayNumber(question.by)! - first;
  const agenda = agendaOf(question);
  const run = runCourse(course, agenda);
  const days = new DoneDays(run.done, first);
  const done = { p05: days.at(0.05), p50: days.at(0.5), p95: days.at(0.95) };
  const critical = criticalSteps(course, agenda, run, last);
  const date = dateAdvice(course, question);
  const yarn = yarnAdvice(course, agenda, run, first, question.yarn?.chanceShort);
  return {
    pace: paceSpreads(hand),
    entries: question.log.length,
    hours: spread(workHours(course)),
    byPart: question.parts.map(({ name, fabric, stitches }) => ({
      name,
      hours: spreadOfLogNormal(hoursOf(hand, fabric, stitches)),
    })),
    days: days.days,
    never: days.never,
    done,
    milestones: milestonesOf(course, run, first),
    critical,
    date,
    yarn,
    sentence: sentenceOf(done, date, critical),
    notices: noticesOf(question, days.never, yarn, date),
    bases: basesOf(question),
  };
};
