import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { energyAt, loadAt, type StretchLaw, squeezeUnder, stiffnessAt, strainAt } from './law.ts';

const laws: fc.Arbitrary<StretchLaw> = fc.record({
  slope: fc.double({ min: 0.002, max: 1, noNaN: true }),
  stiffening: fc.double({ min: 0.002, max: 0.1, noNaN: true }),
  limit: fc.double({ min: 0.2, max: 5, noNaN: true }),
});
const share = fc.double({ min: 0.001, max: 0.9, noNaN: true });

test('W1: no load and the stated stiffness at rest, and no end short of the limit', () => {
  const law = { slope: 0.3, stiffening: 0.02, limit: 0.8 };
  expect(loadAt(law, 0)).toBe(0);
  expect(stiffnessAt(law, 1e-12)).toBeCloseTo(0.3, 9);
  expect(loadAt(law, 0.8)).toBe(Number.POSITIVE_INFINITY);
  // The stiffening alone is the sum 3x² + 4x³ + 5x⁴ … of Singal et al. 2024, here to its fifth power.
  const x = 0.05;
  const series = 3 * x ** 2 + 4 * x ** 3 + 5 * x ** 4 + 6 * x ** 5;
  // The next term is 7x⁶, 1.1e-7 at x = 0.05.
  expect((loadAt(law, x * 0.8) - 0.3 * x * 0.8) / 0.02).toBeCloseTo(series, 6);
});

test('W2: load is the slope of energy, stiffness the slope of load', () => {
  fc.assert(
    fc.property(laws, share, (law, x) => {
      const strain = x * law.limit;
      const h = 1e-5 * law.limit * Math.min(x, 1 - x);
      const slope = (f: typeof energyAt) => (f(law, strain + h) - f(law, strain - h)) / (2 * h);
      // Central difference: error of order (h/x)² and (h/(1 − x))², 1e-10; cancellation of 1e-16/1e-5.
      expect(slope(energyAt) / loadAt(law, strain)).toBeCloseTo(1, 5);
      expect(slope(loadAt) / stiffnessAt(law, strain)).toBeCloseTo(1, 5);
    }),
  );
});

test('W3: strain under a load gives the load back, in few steps, for any law and load', () => {
  fc.assert(
    fc.property(laws, fc.double({ min: 0, max: 5, noNaN: true }), (law, load) => {
      const solved = strainAt(law, load);
      expect(solved.converged).toBe(true);
      expect(solved.value).toBeLessThan(law.limit);
      expect(Math.abs(loadAt(law, solved.value) - load)).toBeLessThan(1e-10 * Math.max(1, load));
      // Newton from above on a convex law; 60 is far above the 12 that were seen.
      expect(solved.iterations).toBeLessThan(60);
    }),
  );
});

test('a negative load is a bug', () => {
  expect(() => strainAt({ slope: 1, stiffening: 1, limit: 1 }, -1)).toThrow(RangeError);
});

const jamming: fc.Arbitrary<StretchLaw & { jam: number }> = fc
  .tuple(laws, fc.double({ min: 0.05, max: 0.9, noNaN: true }))
  .map(([law, jam]) => ({ ...law, jam }));

test('W9: squeezed, load is the slope of energy, stiffness the slope of load', () => {
  fc.assert(
    fc.property(jamming, share, (law, x) => {
      const strain = -x * law.jam;
      const h = 1e-5 * law.jam * Math.min(x, 1 - x);
      const slope = (f: typeof energyAt) => (f(law, strain + h) - f(law, strain - h)) / (2 * h);
      // As for W2: 1e-10 from the difference, and cancellation of 1e-16/1e-5.
      expect(slope(energyAt) / loadAt(law, strain)).toBeCloseTo(1, 5);
      expect(slope(loadAt) / stiffnessAt(law, strain)).toBeCloseTo(1, 5);
    }),
  );
});

test('W9: stiffness is the same on both sides of rest, and squeezing stiffens to the jam', () => {
  fc.assert(
    fc.property(jamming, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (law, x) => {
      // Y but for 6β/(Y limit²) times the strain: at most 7500 · 1e-12.
      expect(stiffnessAt(law, 1e-12) / stiffnessAt(law, -1e-12)).toBeCloseTo(1, 6);
      expect(stiffnessAt(law, -x * law.jam)).toBeGreaterThan(law.slope);
      expect(loadAt(law, -law.jam)).toBe(Number.NEGATIVE_INFINITY);
      expect(stiffnessAt(law, -law.jam)).toBe(Number.POSITIVE_INFINITY);
      expect(energyAt(law, -law.jam)).toBe(Number.POSITIVE_INFINITY);
    }),
  );
});

test('W9: the squeeze under a push gives the push back and never reaches the jam', () => {
  fc.assert(
    fc.property(jamming, fc.double({ min: 0, max: 1, noNaN: true }), (law, times) => {
      // Up to 3 times Y J: x = 0.95. Closer to the jam 1 − x² loses digits.
      const push = 3 * times * law.slope * law.jam;
      const squeeze = squeezeUnder(law, push);
      expect(squeeze).toBeLessThan(law.jam);
      // 1 − x² is 0.1 at least: ten units in the last place.
      expect(Math.abs(loadAt(law, -squeeze) + push)).toBeLessThan(1e-13);
    }),
  );
});

test('W9: without a jam squeezing is linear', () => {
  const law = { slope: 0.3, stiffening: 0.02, limit: 0.8 };
  expect(loadAt(law, -0.4)).toBeCloseTo(-0.12, 15);
  expect(stiffnessAt(law, -0.4)).toBe(0.3);
  expect(energyAt(law, -0.4)).toBeCloseTo((0.3 * 0.16) / 2, 15);
  expect(squeezeUnder(law, 0.12)).toBeCloseTo(0.4, 15);
});
