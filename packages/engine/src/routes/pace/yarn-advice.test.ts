import { expect, test } from 'vitest';
import { normalColumns } from '../../stats/index.ts';
import { PLAN } from './check/plans.ts';
import { runCourse } from './course.ts';
import { handOf } from './hand.ts';
import { isoDay } from './iso-day.ts';
import { courseOf } from './steps.ts';
import { agendaOf } from './week.ts';
import { yarnAdvice } from './yarn-advice.ts';

const DRAWS = 2000;

test('PC13: asked for on the last day, yarn comes in time in 95 % of draws; a day later it does not', () => {
  const yarn = {
    heldOverNeeded: { median: 0.9, logSd: 0.1 },
    shopDays: 6,
    order: 'when-short',
  } as const;
  const course = courseOf({ ...PLAN, yarn }, handOf(PLAN.log), normalColumns(2, DRAWS));
  const run = runCourse(course, agendaOf(PLAN));
  const first = Date.parse(PLAN.from) / 864e5;
  const { lastOrderDay } = yarnAdvice(course, agendaOf(PLAN), run, first)!;
  const stillWhenAskedOn = (iso: string): number => {
    const day = Date.parse(iso) / 864e5 - first;
    const late = run.ranOut.filter((out, i) => out < day + Math.ceil(course.gate!.shopDays[i]!));
    return late.length / DRAWS;
  };
  expect(stillWhenAskedOn(lastOrderDay!)).toBeLessThanOrEqual(0.05);
  expect(stillWhenAskedOn(isoDay(Date.parse(lastOrderDay!) / 864e5 + 1))).toBeGreaterThan(0.05);
});
