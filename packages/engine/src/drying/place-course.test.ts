import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { excessAfter, hoursUntil, type PlaceCourse } from './place-course.ts';

interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  maxStepSize: number;
  solve(
    slope: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[] };
}
// The package ships its TypeScript beside its JavaScript, which is not of these strict settings.
const { Solver } = createRequire(import.meta.url)('odex') as {
  Solver: new (unknowns: number) => OdexSolver;
};

const places = fc.record({
  excess: fc.double({ min: 0.05, max: 2, noNaN: true }),
  critical: fc.double({ min: 0.01, max: 0.4, noNaN: true }),
  rate: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
  bend: fc.double({ min: 0.5, max: 1, noNaN: true }),
});

/** The same law as a differential equation, integrated by extrapolation (Hairer's ODEX). */
const integrated = (place: PlaceCourse, hours: number): number => {
  const solver = new Solver(1);
  solver.absoluteTolerance = solver.relativeTolerance = 1e-10;
  solver.maxSteps = 100_000;
  // So that no step leaps over the whole falling part, where all its samples would look constant.
  solver.maxStepSize = hours / 400;
  const wet = place.rate;
  const loss = (w: number): number =>
    w >= place.critical ? wet : wet * (Math.max(0, w) / place.critical) ** place.bend;
  return solver.solve((_, [w]) => [-loss(w!)], 0, [place.excess], hours).y[0]!;
};

test('D7: the closed form is what an independent integration of the equation gives', () => {
  fc.assert(
    fc.property(places, fc.double({ min: 0.1, max: 1, noNaN: true }), (place, share) => {
      const hours = share * hoursUntil(place, 0.001);
      // The integrator steps over the kink at the critical regain to about 1e-7.
      expect(Math.abs(excessAfter(place, hours) - integrated(place, hours))).toBeLessThan(1e-6);
    }),
    { numRuns: 60 },
  );
});

test('D7: hours and excess are inverse', () => {
  fc.assert(
    fc.property(places, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (place, share) => {
      const left = share * place.excess;
      // A few roundings, raised to a power of 2 at most.
      expect(excessAfter(place, hoursUntil(place, left)) / left).toBeCloseTo(1, 8);
    }),
  );
});

test('D7: water only falls, at first at the constant rate, then slower', () => {
  fc.assert(
    fc.property(places, (place) => {
      const step = hoursUntil(place, 0.001) / 40;
      for (let i = 0; i < 40; i++) {
        const lost = excessAfter(place, i * step) - excessAfter(place, (i + 1) * step);
        expect(lost).toBeGreaterThanOrEqual(0);
        expect(lost).toBeLessThanOrEqual(place.rate * step * (1 + 1e-9));
      }
    }),
  );
});

test('D7: a place in proportion has the time constant of Steele 1958, critical over rate', () => {
  const place = { excess: 0.2, critical: 0.25, rate: 0.05, bend: 1 };
  expect(excessAfter(place, 5)).toBeCloseTo(0.2 * Math.exp(-1), 12);
  expect(hoursUntil({ ...place, excess: 0.65 }, 0.25)).toBeCloseTo(8, 12);
});
