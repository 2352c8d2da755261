import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayNumber } from '../result/day-number.ts';
import { chanceBy, spanOf, stepsOf, ticksOf } from './curve-scale.ts';

const day = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);
const START = dayNumber('2031-04-01');

/** Days with a chance each, as the engine gives them. */
const some = fc
  .array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 40 })
  .map((weights) => {
    const all = weights.reduce((a, b) => a + b, 0);
    let cumulative = 0;
    return weights.map((weight, k) => {
      cumulative += weight / all;
      return { day: day(START + 2 * k), chance: weight / all, cumulative };
    });
  });

test('PC2: the curve rises, never falls, and stays inside what is drawn', () => {
  fc.assert(
    fc.property(some, fc.integer({ min: -10, max: 200 }), (days, wanted) => {
      const span = spanOf(days, day(START), day(START + wanted));
      const corners = stepsOf(days, span);
      for (const [k, [at, chance]] of corners.entries()) {
        expect(at).toBeGreaterThanOrEqual(span.first);
        expect(at).toBeLessThanOrEqual(span.last);
        expect(chance).toBeGreaterThanOrEqual(corners[Math.max(0, k - 1)]![1]);
      }
      expect(corners.at(-1)![1]).toBeGreaterThanOrEqual(0.99 - 1e-9);
    }),
  );
});

test('PC2: a wanted day is in sight unless it is far beyond the end', () => {
  const days = [{ day: '2031-04-20', chance: 1, cumulative: 1 }];
  const lastDay = (by: string | null) => spanOf(days, '2031-04-01', by).last;
  expect(lastDay(null)).toBe(dayNumber('2031-04-21'));
  expect(lastDay('2031-05-10')).toBe(dayNumber('2031-05-11'));
  expect(lastDay('2032-04-20')).toBe(dayNumber('2031-04-21'));
  expect(spanOf([], '2031-04-01', null).last).toBe(dayNumber('2031-04-07'));
});

test('PC2: days under the curve are no more than have room, in even steps', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 6, max: 1096 }),
      fc.integer({ min: 3, max: 12 }),
      (long, most) => {
        const ticks = ticksOf({ first: START, last: START + long }, most);
        expect(ticks.length).toBeLessThanOrEqual(most + 1);
        expect(ticks[0]).toBe(START);
        expect(new Set(ticks.slice(1).map((each, k) => each - ticks[k]!)).size).toBeLessThan(2);
      },
    ),
  );
});

test('PC2: the chance by a day counts that day, and is 0 before the first', () => {
  const days = [
    { day: '2031-04-20', chance: 0.25, cumulative: 0.25 },
    { day: '2031-04-22', chance: 0.75, cumulative: 1 },
  ];
  expect(chanceBy(days, '2031-04-19')).toBe(0);
  expect(chanceBy(days, '2031-04-20')).toBe(0.25);
  expect(chanceBy(days, '2031-04-21')).toBe(0.25);
  expect(chanceBy(days, '2033-01-01')).toBe(1);
});
