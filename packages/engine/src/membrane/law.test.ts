import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { linearLaw, stiffeningLaw, type TensionLaw } from './law.ts';

const laws: fc.Arbitrary<TensionLaw> = fc.oneof(
  fc.double({ min: 0.01, max: 2, noNaN: true }).map(linearLaw),
  fc
    .record({
      slope: fc.double({ min: 0.01, max: 1, noNaN: true }),
      stiffening: fc.double({ min: 0, max: 0.1, noNaN: true }),
      limit: fc.double({ min: 0.2, max: 3, noNaN: true }),
      jam: fc.double({ min: -0.9, max: -0.2, noNaN: true }),
    })
    .map(stiffeningLaw),
);

test('ME1: stress is the slope of energy and stiffness the slope of stress, pulled and squeezed', () => {
  fc.assert(
    fc.property(laws, fc.double({ min: -0.8, max: 0.8, noNaN: true }), (law, share) => {
      const strain = share * (share > 0 ? Math.min(law.limit, 2) : -(law.jam ?? -0.9));
      const h = 1e-5 * Math.min(1, law.limit);
      // Curvature jumps at rest, where the limit gives way to the jam.
      fc.pre(Math.abs(strain) > 2 * h);
      const slope = (f: (e: number) => number) => (f(strain + h) - f(strain - h)) / (2 * h);
      const scale = law.stiffness(strain);
      // Central differences: third derivatives times h² (1e-10) and rounding of 1e-16/1e-5.
      expect(Math.abs(slope(law.energy) - law.stress(strain))).toBeLessThan(1e-6 * scale);
      expect(Math.abs(slope(law.stress) - law.stiffness(strain))).toBeLessThan(1e-4 * scale);
    }),
  );
});

test('ME1: nothing is stored at rest, and no load reaches the limit or the jam', () => {
  const law = stiffeningLaw({ slope: 0.3, stiffening: 0.02, limit: 0.8, jam: -0.5 });
  expect([law.energy(0), law.stress(0), law.stiffness(0)]).toEqual([0, 0, 0.3]);
  for (const strain of [0.8, 1, -0.5, -0.6]) {
    expect(law.energy(strain)).toBe(Number.POSITIVE_INFINITY);
    expect(law.stiffness(strain)).toBe(Number.POSITIVE_INFINITY);
  }
  // By hand at half the limit: 0.3·0.4 + 0.02 (4 − 1 − 1); only rounding differs.
  expect(law.stress(0.4)).toBeCloseTo(0.16, 14);
  expect(law.stress(-0.25)).toBeCloseTo(-0.3 * 0.25 - 0.04, 14);
});
