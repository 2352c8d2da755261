import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toClock, toModel } from './pace.ts';

test('D15: the clock is the model until the last weighing, and runs at its pace after it', () => {
  const paced = { steadyHours: 4, pace: 1.5 };
  expect([0, 4, 6].map((hours) => toClock(paced, hours))).toEqual([0, 4, 7]);
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.double({ min: 0.3, max: 3, noNaN: true }),
      (hours, steadyHours, pace) => {
        // Four roundings of numbers up to 300.
        expect(toModel({ steadyHours, pace }, toClock({ steadyHours, pace }, hours))).toBeCloseTo(
          hours,
          10,
        );
      },
    ),
  );
});
