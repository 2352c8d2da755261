import { expect, test } from 'vitest';
import { EVENING } from './assumptions.ts';
import { type Course, type Gate, runCourse, shareBy } from './course.ts';
import { weekday } from './iso-day.ts';
import { agendaOf, type Week } from './week.ts';

/** Wednesday, 9 April 2031. */
const WEEK: Week = { hours: [2, 0, 1, 0, 3, 5, 4], from: '2031-04-09', away: ['2031-04-13'] };
const FIRST = Date.UTC(2031, 3, 9) / 86_400_000;
const AWAY = 4;

interface Luck {
  readonly front: number;
  readonly back: number;
  readonly drying: number;
  readonly share: number;
}

/** Every combination of a few whole numbers, each as likely as another. */
const LUCKS: readonly Luck[] = [3, 7, 12].flatMap((front) =>
  [2, 9].flatMap((back) =>
    [3, 10, 30, 60].flatMap((drying) =>
      [0.25, 0.5, 2].map((share) => ({ front, back, drying, share })),
    ),
  ),
);
const SHOP_DAYS = 5;
const SEW = 3;

/** Knits minute by minute, by the clock on the wall, and counts the days: no sums of hours, no search. */
const byHand = (luck: Luck, order: Gate['order'] | null): number => {
  const MINUTES = 60;
  let knit = Math.round(MINUTES * (luck.front + luck.back));
  const dry = luck.drying;
  let sew = SEW * MINUTES;
  const gone = Math.round(luck.share * knit);
  let knitted = 0;
  let arrives = order === 'at-once' ? SHOP_DAYS : Number.POSITIVE_INFINITY;
  let dryFrom: number | null = null;
  for (let day = 0; day < 400; day++) {
    const hours = day === AWAY ? 0 : WEEK.hours[weekday(FIRST + day)]!;
    for (let minute = 0; minute < hours * MINUTES; minute++) {
      const short = order !== null && luck.share < 1 && knitted >= gone;
      if (knit > 0) {
        if (short && day < arrives) break;
        knit--;
        knitted++;
        if (order === 'when-short' && knitted === gone && arrives === Number.POSITIVE_INFINITY)
          arrives = day + SHOP_DAYS;
        if (knit === 0) dryFrom = day;
      } else if (dryFrom !== null && day >= dryFrom + Math.floor((EVENING + dry) / 24)) {
        if (day === dryFrom) break;
        sew--;
        if (sew === 0) return day;
      }
    }
  }
  return Number.POSITIVE_INFINITY;
};

const column = (of: (luck: Luck) => number): Float64Array => Float64Array.from(LUCKS, of);
const courseOf = (order: Gate['order'] | null): Course => {
  const work = (id: string, takesYarn: boolean, hours: Float64Array) =>
    ({ id, name: id, kind: 'work', takesYarn, hours }) as const;
  return {
    n: LUCKS.length,
    steps: [
      work(
        'front',
        true,
        column(({ front }) => front),
      ),
      work(
        'back',
        true,
        column(({ back }) => back),
      ),
      {
        ...work(
          'drying',
          false,
          column(({ drying }) => drying),
        ),
        kind: 'clock',
      },
      work(
        'sewing',
        false,
        column(() => SEW),
      ),
    ],
    gate:
      order === null
        ? null
        : { share: column(({ share }) => share), shopDays: column(() => SHOP_DAYS), order },
    stretch: column(() => 1),
  };
};

test.each([null, 'at-once', 'when-short'] as const)(
  'PC6: chances are those of enumerating every case minute by minute (yarn %s)',
  (order) => {
    const { done } = runCourse(courseOf(order), agendaOf(WEEK));
    const expected = LUCKS.map((luck) => byHand(luck, order));
    expect(Array.from(done)).toEqual(expected);
    expect(new Set(expected).size).toBeGreaterThan(5);
    for (const day of [5, 12, 20])
      expect(shareBy(done, day)).toBe(expected.filter((each) => each <= day).length / LUCKS.length);
  },
);

test('PC6: no hours at all are never; nothing to do is done on the first day', () => {
  const idle = agendaOf({ ...WEEK, hours: [0, 0, 0, 0, 0, 0, 0] });
  expect(runCourse(courseOf(null), idle).done.every((day) => day === Infinity)).toBe(true);
  const nothing: Course = { n: 1, steps: [], gate: null, stretch: Float64Array.of(1) };
  expect(runCourse(nothing, agendaOf(WEEK)).done[0]).toBe(0);
});
