import { HORIZON_DAYS } from './assumptions.ts';
import { type Course, type Run, runCourse, shareBy } from './course.ts';
import type { CriticalStep } from './types.ts';
import type { Agenda } from './week.ts';

const within = (day: number): number => Math.min(day, HORIZON_DAYS);

/**
 * What each step costs in days: the same draws once more with that step taking no time. The dearest
 * first; steps that cost nothing are left out. `last`: the day that is wanted, counted from the first.
 */
export const criticalSteps = (
  course: Course,
  agenda: Agenda,
  { done }: Run,
  last: number | null,
): CriticalStep[] => {
  const one = ({ id, name }: { readonly id: string; readonly name: string }): CriticalStep => {
    const without = runCourse(course, agenda, id).done;
    let [days, draws] = [0, 0];
    for (let i = 0; i < done.length; i++) {
      const gained = within(done[i]!) - within(without[i]!);
      days += gained;
      if (gained > 0) draws++;
    }
    return {
      id,
      name,
      daysGained: days / done.length,
      share: draws / done.length,
      chanceWithout: last === null ? null : shareBy(without, last),
    };
  };
  const yarn = course.gate === null ? [] : [{ id: 'yarn', name: 'waiting for yarn' }];
  return [...course.steps, ...yarn]
    .map(one)
    .filter(({ daysGained }) => daysGained > 0)
    .sort((a, b) => b.daysGained - a.daysGained);
};
