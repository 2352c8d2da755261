import { HORIZON_DAYS } from './assumptions.ts';
import { dayNumber, weekday } from './iso-day.ts';

/** Hours for knitting from the first day on. Days count from 0, the day that the plan starts from. */
export interface Agenda {
  /** Nothing happens before this day. */
  readonly start: number;
  /** `until[d]`: hours before day d, all days from `start`; HORIZON_DAYS + 1 numbers that never fall. */
  readonly until: Float64Array;
}

export interface Week {
  /** Monday first. */
  readonly hours: readonly number[];
  readonly from: string;
  readonly away: readonly string[];
}

/** Hours day by day; none before `start`, and none on days away. Days that are no days are a bug. */
export const agendaOf = ({ hours, from, away }: Week, start = 0): Agenda => {
  const first = dayNumber(from);
  if (first === null) throw new RangeError(`no day: ${from}`);
  const gone = new Set(away.map(dayNumber));
  const until = new Float64Array(HORIZON_DAYS + 1);
  for (let d = 0; d < HORIZON_DAYS; d++) {
    const free = d >= start && !gone.has(first + d);
    until[d + 1] = until[d]! + (free ? hours[weekday(first + d)]! : 0);
  }
  return { start, until };
};

/**
 * The day on which so many hours of the agenda are used up; Infinity beyond its end. Exactly a day's
 * end is that day.
 */
export const dayOfHour = ({ until }: Agenda, hour: number): number => {
  if (hour > until[HORIZON_DAYS]!) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, HORIZON_DAYS - 1];
  while (low < high) {
    const half = (low + high) >> 1;
    if (until[half + 1]! >= hour) high = half;
    else low = half + 1;
  }
  return low;
};
