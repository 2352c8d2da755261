import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TOLERANCE } from './assumptions.ts';
import {
  dryAfter,
  type GarmentCourse,
  massAfter,
  wholeExcess,
  wholeHours,
} from './garment-course.ts';
import { excessAfter, type PlaceCourse } from './place-course.ts';

const garments = fc
  .record({
    excess: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
    critical: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
    rate: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
    bend: fc.double({ min: 0.5, max: 1, noNaN: true }),
    share: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
    slower: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
  })
  .map(
    ({ share, slower, ...course }): GarmentCourse => ({
      fibreG: 450,
      dryMassG: 500,
      places: [
        { share: 1 - share, course },
        { share, course: { ...course, rate: slower * course.rate } },
      ],
    }),
  );

const lossOf = ({ critical, rate, bend }: PlaceCourse, w: number): number =>
  w >= critical ? rate : rate * (w / critical) ** bend;

/** Fourth-order Runge-Kutta on both places, small steps; knows nothing of the closed form. */
const stepped = (garment: GarmentCourse, hours: number, steps: number): number[] => {
  const h = hours / steps;
  return garment.places.map(({ course }) => {
    let w = course.excess;
    for (let i = 0; i < steps; i++) {
      const k1 = lossOf(course, w);
      const k2 = lossOf(course, Math.max(0, w - (h / 2) * k1));
      const k3 = lossOf(course, Math.max(0, w - (h / 2) * k2));
      const k4 = lossOf(course, Math.max(0, w - h * k3));
      w = Math.max(0, w - (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4));
    }
    return w;
  });
};

test('D10: the mass at the time of dry is what stepping the equation gives', () => {
  fc.assert(
    fc.property(garments, (garment) => {
      const hours = dryAfter(garment, TOLERANCE);
      const left = stepped(garment, hours, 4000);
      const whole = garment.places.reduce((sum, { share }, i) => sum + share * left[i]!, 0);
      // One step goes over the kink, with an error of its square: (1/4000)² of some 10 rates.
      expect(Math.abs(massAfter(garment, hours) - (500 + 450 * whole))).toBeLessThan(0.01);
      // At dry both tolerances hold and one of them is just met.
      expect(whole).toBeLessThan(TOLERANCE.whole + 1e-5);
      expect(Math.max(...left)).toBeLessThan(TOLERANCE.place + 1e-5);
      const slack = Math.min(TOLERANCE.whole - whole, TOLERANCE.place - Math.max(...left));
      expect(Math.abs(slack)).toBeLessThan(1e-5);
    }),
    { numRuns: 40 },
  );
});

test('D10: mass balance: what has gone and what is left make what was there', () => {
  fc.assert(
    fc.property(garments, fc.double({ min: 0.05, max: 1, noNaN: true }), (garment, share) => {
      const hours = share * dryAfter(garment, TOLERANCE);
      // Water gone is the integral of the losses, by Simpson's rule over 2,000 pieces.
      const n = 2000;
      const flow = (t: number): number =>
        garment.places.reduce(
          (sum, { share: part, course }) => sum + part * lossOf(course, excessAfter(course, t)),
          0,
        );
      let gone = 0;
      for (let i = 0; i <= n; i++)
        gone += (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2) * flow((i * hours) / n);
      gone *= hours / n / 3;
      const lost = massAfter(garment, 0) - massAfter(garment, hours);
      // Simpson's rule over a kink of the slope is off by the square of a piece, (1/2000)² of 450 g · 30.
      expect(Math.abs(lost - 450 * gone)).toBeLessThan(4e-3);
    }),
    { numRuns: 20 },
  );
});

test('D10: the time for the whole lies between its places and is solved to what it states', () => {
  fc.assert(
    fc.property(garments, fc.double({ min: 0.02, max: 0.9, noNaN: true }), (garment, share) => {
      const left = share * garment.places[0]!.course.excess;
      const solved = wholeHours(garment, left);
      expect(solved.converged).toBe(true);
      // A bracket of a millionth of the hours, at the fastest rate.
      expect(Math.abs(wholeExcess(garment, solved.value) - left)).toBeLessThan(1e-5);
    }),
  );
});

test('D10: the worked garment: 400 g of water, 1.2 m² of wet faces at 0.072 kg/m²h take 4.6 h while wet', () => {
  // By hand: 400 / (1200 · 0.072) = 4.63 h if all of it went at the constant rate.
  const fibreG = 450;
  const rate = (1.2 * 72) / fibreG;
  const course = { excess: 400 / fibreG, critical: 1e-9, rate, bend: 1 };
  const garment = { fibreG, dryMassG: 500, places: [{ share: 1, course }] };
  // The last 1 % of the dry fibre, 4.5 g, is left by definition: 0.05 h.
  expect(wholeHours(garment, TOLERANCE.whole).value).toBeCloseTo((400 - 4.5) / 86.4, 6);
});
