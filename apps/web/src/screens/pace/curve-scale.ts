import type { PaceForecast } from '@dryflat/engine/routes';
import { dayNumber } from '../result/day-number.ts';

type Days = PaceForecast['days'];

/** Days as numbers since 1970, both ends drawn. */
export interface DaySpan {
  readonly first: number;
  readonly last: number;
}

/** The least that is drawn, days: a finish tomorrow is not blown up to the whole width. */
const LEAST = 6;
/** What comes later than this share of the draws is not drawn. */
const MOST = 0.99;

/**
 * From the first day of the plan to where nearly all is done, and to the wanted day where that is
 * later; a wanted day far beyond is left out at three times the width, for the curve would shrink to
 * a step.
 */
export const spanOf = (days: Days, from: string, by: string | null): DaySpan => {
  const first = dayNumber(from);
  const end = days.find(({ cumulative }) => cumulative >= MOST) ?? days.at(-1);
  const done = Math.max(first + LEAST, end === undefined ? first : dayNumber(end.day) + 1);
  const wanted = by === null ? first : dayNumber(by) + 1;
  return { first, last: wanted > first + 3 * (done - first) ? done : Math.max(done, wanted) };
};

/** Corners of the curve, day and chance: level between days, up on each. */
export const stepsOf = (days: Days, { first, last }: DaySpan): [number, number][] => {
  const corners: [number, number][] = [[first, 0]];
  for (const { day, cumulative } of days) {
    const at = dayNumber(day);
    if (at > last) break;
    corners.push([at, corners.at(-1)![1]], [at, cumulative]);
  }
  return [...corners, [last, corners.at(-1)![1]]];
};

/** Days that are written under the curve: whole weeks or months apart, so that there are `most`. */
export const ticksOf = ({ first, last }: DaySpan, most: number): number[] => {
  const step = [1, 2, 7, 14, 28, 56, 91, 182].find((each) => (last - first) / each <= most) ?? 364;
  return Array.from({ length: Math.floor((last - first) / step) + 1 }, (_, k) => first + k * step);
};

/** Chance of being done by a day, that day included. */
export const chanceBy = (days: Days, day: string): number =>
  days.findLast((each) => each.day <= day)?.cumulative ?? 0;
