import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import { BENDING_MODULUS, bendingRatio, drawForce } from './monofilament-force.ts';
import { narrowingRatio, type RestStitch } from './yarn-conservation.ts';

const nylon: RestStitch = { stitch: mm(3.93), row: mm(2.08), delta: 0.86 };

test('L5: the bending ratio is the published 0.24', () => {
  // Poincloux et al. 2018 print two figures; the closed form of three printed numbers is 0.24090.
  expect(bendingRatio(nylon)).toBeCloseTo(0.24, 2);
  expect(bendingRatio(nylon)).toBeCloseTo(0.2409, 5);
});

// Closed form with the published moduli and 51 stitches; half of the last digit.
test.each([
  [0.05, 0.1236, 0.026],
  [0.1, 0.2392, 0.0504],
  [0.25, 0.5586, 0.1176],
  [0.5, 1.0864, 0.2287],
  [1, 2.7511, 0.5792],
])('L5: at a strain of %d the pull is %d N, let go %d N', (strain, loading, unloading) => {
  expect(drawForce(nylon, 51, strain, BENDING_MODULUS.loading)).toBeCloseTo(loading, 4);
  expect(drawForce(nylon, 51, strain, BENDING_MODULUS.unloading)).toBeCloseTo(unloading, 4);
});

test('L5: the force is the slope of the bending energy', () => {
  // Energy per stitch, in units of the modulus times w · c: 1/w + β/c along w + δ c constant. A central
  // difference of step 1e-5 has an error of order 1e-10 relative; rounding adds 1e-10.
  const energy = (strain: number) => {
    const row = 1 + strain;
    const stitch = 1 - narrowingRatio(nylon) * strain;
    return 1 / stitch + (bendingRatio(nylon) * (nylon.stitch / nylon.row)) / row;
  };
  for (const strain of [0.1, 0.5, 1, 1.8]) {
    const slope = (energy(strain + 1e-5) - energy(strain - 1e-5)) / 2e-5;
    expect(drawForce(nylon, 1, strain, 1) / slope).toBeCloseTo(1, 7);
  }
});

test('L5: nothing at rest, without bound at the limit', () => {
  expect(drawForce(nylon, 51, 0, 1)).toBe(0);
  expect(drawForce(nylon, 51, 2.19, 1)).toBeGreaterThan(1e5);
  expect(() => drawForce(nylon, 51, 2.2, 1)).toThrow(RangeError);
});
