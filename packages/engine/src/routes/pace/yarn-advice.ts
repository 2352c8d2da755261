import { MOST_SHORT } from '../../fabric/index.ts';
import { quantilesInPlace } from '../../stats/index.ts';
import { HORIZON_DAYS } from './assumptions.ts';
import { type Course, type Run, runCourse } from './course.ts';
import { isoDay } from './iso-day.ts';
import type { YarnAdvice } from './types.ts';
import type { Agenda } from './week.ts';

const cap = (day: number): number => Math.min(day, HORIZON_DAYS);

/**
 * Whether to ask for more yarn, and until when: the last day from which a skein comes before the
 * yarn runs out in all but 5 % of the draws. `first`: number of the day that the plan starts from. `told`: the
 * chance that it runs out where that was drawn before; below 5 % none has to be asked for.
 */
export const yarnAdvice = (
  course: Course,
  agenda: Agenda,
  run: Run,
  first: number,
  told?: number,
): YarnAdvice | null => {
  const { gate } = course;
  if (gate === null) return null;
  const free = runCourse(course, agenda, 'yarn');
  // Days on which asking is just in time; Infinity where it never runs out.
  const inTime = run.ranOut.map((day, i) => day - Math.ceil(gate.shopDays[i]!)).sort();
  const last = inTime[Math.floor(MOST_SHORT * inTime.length)]!;
  const waits = run.done.map((day, i) => cap(day) - cap(free.done[i]!));
  const [p5, p50, p95] = quantilesInPlace(waits, [0.05, 0.5, 0.95]);
  const short = told ?? gate.share.reduce((sum, share) => sum + (share < 1 ? 1 : 0), 0) / course.n;
  const isAsked = Number.isFinite(last) && short >= MOST_SHORT;
  return {
    chanceShort: short,
    lastOrderDay: isAsked ? isoDay(first + last) : null,
    tooLate: isAsked && last < 0,
    waitDays: { p5: p5!, p50: p50!, p95: p95! },
  };
};
