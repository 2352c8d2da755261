import type { NormalColumns } from '../../stats/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import { runCourse, shareBy } from './course.ts';
import { paceFaults } from './faults.ts';
import { handOf } from './hand.ts';
import { dayNumber } from './iso-day.ts';
import { courseOf, workHours } from './steps.ts';
import type { PaceDraws, PaceQuestion } from './types.ts';
import { agendaOf } from './week.ts';

/**
 * Hours of work and the day of being done over the draws of `normals`, which names its columns
 * `pace:…`: plans that are compared on the same columns are compared on the same luck.
 */
export const drawPace = (question: PaceQuestion, normals: NormalColumns): Result<PaceDraws> => {
  const faults = paceFaults(question);
  if (faults.length > 0) return fail(...faults);
  const course = courseOf(question, handOf(question.log), normals);
  const { done } = runCourse(course, agendaOf(question));
  return ok({
    n: normals.n,
    hours: workHours(course),
    days: done,
    chanceBy: (day) => shareBy(done, (dayNumber(day) ?? Number.NaN) - dayNumber(question.from)!),
  });
};
