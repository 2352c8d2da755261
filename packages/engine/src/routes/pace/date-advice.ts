import { MOST_HOURS, SURE } from './assumptions.ts';
import { type Course, runCourse, shareBy } from './course.ts';
import { dayNumber, isoDay } from './iso-day.ts';
import type { DateAdvice, PaceQuestion } from './types.ts';
import { agendaOf } from './week.ts';

/** Halvings of the range of hours: the answer is within a thousandth of it. */
const HALVINGS = 10;

const chanceWith = (course: Course, week: PaceQuestion, last: number, start = 0): number =>
  shareBy(runCourse(course, agendaOf(week, start)).done, last);

/** Latest day to start on, counted from the first; null where even the first is too late. */
const latestStart = (course: Course, question: PaceQuestion, last: number): number | null => {
  let [low, high] = [-1, last];
  while (low < high) {
    const half = Math.ceil((low + high) / 2);
    if (chanceWith(course, question, last, half) >= SURE) low = half;
    else high = half - 1;
  }
  return low < 0 ? null : low;
};

const sum = (hours: readonly number[]): number => hours.reduce((a, b) => a + b, 0);

/** Hours day by day, each in the same proportion as now and none above `MOST_HOURS`. */
const hoursNeeded = (
  course: Course,
  question: PaceQuestion,
  last: number,
): readonly number[] | null => {
  const had = question.hours.filter((each) => each > 0);
  if (had.length === 0) return null;
  const times = (factor: number) =>
    question.hours.map((each) => Math.min(each * factor, MOST_HOURS));
  const enough = (factor: number): boolean =>
    chanceWith(course, { ...question, hours: times(factor) }, last) >= SURE;
  let [low, high] = [0, MOST_HOURS / Math.min(...had)];
  if (!enough(high)) return null;
  for (let k = 0; k < HALVINGS + Math.log2(Math.max(1, high)); k++) {
    const half = (low + high) / 2;
    if (enough(half)) high = half;
    else low = half;
  }
  return times(high);
};

/** What a wanted day asks for; null where none is wanted. */
export const dateAdvice = (course: Course, question: PaceQuestion): DateAdvice | null => {
  if (question.by === null) return null;
  const first = dayNumber(question.from)!;
  const last = dayNumber(question.by)! - first;
  const start = latestStart(course, question, last);
  const hours = last < 0 ? null : hoursNeeded(course, question, last);
  return {
    by: question.by,
    chance: chanceWith(course, question, last),
    latestStart: start === null ? null : isoDay(first + start),
    hoursPerWeek: hours && sum(hours),
    hours,
  };
};
