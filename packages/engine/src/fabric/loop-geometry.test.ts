import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import {
  changeBetween,
  countPer,
  LOOP_CONSTANTS,
  loopOfPitch,
  pitchOfLoop,
  RELAXATIONS,
  stitchesPerSquareMm,
} from './loop-geometry.ts';

// Munden 1959 (table in Spencer 2001, p. 281) and Knapton et al. 1968.
test.each([
  ['dryRelaxed', 5, 3.8, 19, 1.32],
  ['wetRelaxed', 5.3, 4.1, 21.6, 1.29],
  ['fullyRelaxed', 5.5, 4.2, 23.1, 1.31],
] as const)('L1: %s has kc %d, kw %d, ks %d and ratio %d', (state, kc, kw, ks, ratio) => {
  const row = LOOP_CONSTANTS[state];
  expect(row).toMatchObject({ kc, kw, ks });
  // Three figures are printed for the ratio.
  expect(row.kc / row.kw).toBeCloseTo(ratio, 2);
  // The constants are rounded independently (5.3 · 4.1 = 21.73 against 21.6), so 1 %.
  expect(Math.abs((row.kc * row.kw) / row.ks - 1)).toBeLessThan(0.01);
});

// Consequences of the constants alone, to the digits that they carry when computed exactly.
test.each([
  ['dryRelaxed', 'wetRelaxed', -5.66, -7.32, -12.56],
  ['wetRelaxed', 'fullyRelaxed', -3.64, -2.38, -5.93],
  ['dryRelaxed', 'fullyRelaxed', -9.09, -9.52, -17.75],
] as const)(
  'L1: %s to %s: length %d %%, width %d %%, area %d %%',
  (from, to, length, width, area) => {
    const change = changeBetween(from, to);
    expect(change.length * 100).toBeCloseTo(length, 2);
    expect(change.width * 100).toBeCloseTo(width, 2);
    expect(change.area * 100).toBeCloseTo(area, 2);
  },
);

test('L1: the stitch density item of an examination: 92 per cm²', () => {
  // source: 'gate-2015': fully relaxed, kw 4.2, kc 5.5, l = 0.5 cm, answer 92 (92.4 exactly).
  const perSquareCm = stitchesPerSquareMm(mm(5), 'fullyRelaxed') * 100;
  expect(perSquareCm).toBeCloseTo(92.4, 9);
  expect(Math.round(perSquareCm)).toBe(92);
});

test('L1: a yarn-level simulation lands on the wet-relaxed row within 2.5 %', () => {
  // Singal et al. 2024, data set: 11.28 mm of yarn per stitch relaxes to 2.82 by 2.12 mm. The model
  // knows nothing of Munden; 2.5 % is the distance that the published table of states resolves.
  expect(Math.abs(pitchOfLoop(mm(11.28), 'wetRelaxed', 'width') / 2.82 - 1)).toBeLessThan(0.025);
  expect(Math.abs(pitchOfLoop(mm(11.28), 'wetRelaxed', 'length') / 2.12 - 1)).toBeLessThan(0.025);
});

test('L2: loop and pitch are inverse, and counts follow from the pitch', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 60, noNaN: true }),
      fc.constantFrom(...RELAXATIONS),
      fc.constantFrom('width' as const, 'length' as const),
      (length, state, direction) => {
        const loop = mm(length);
        const pitch = pitchOfLoop(loop, state, direction);
        // One multiplication undoes one division: two roundings.
        expect(Math.abs(loopOfPitch(pitch, state, direction) / loop - 1)).toBeLessThan(1e-15 * 4);
        expect(countPer(mm(100), loop, state, direction) * pitch).toBeCloseTo(100, 10);
      },
    ),
  );
});

test('L2: worsted at 20 stitches and 28 rows over 4 in: the two estimates of its loop differ by 7 %', () => {
  // Munden dry relaxed: 5.08 mm · 3.8 = 19.3 mm and 3.63 mm · 5.0 = 18.1 mm.
  expect(loopOfPitch(mm(101.6 / 20), 'dryRelaxed', 'width')).toBeCloseTo(19.3, 1);
  expect(loopOfPitch(mm(101.6 / 28), 'dryRelaxed', 'length')).toBeCloseTo(18.1, 1);
});

test('L2: no length is a bug', () => {
  expect(() => pitchOfLoop(mm(0), 'dryRelaxed', 'width')).toThrow(RangeError);
});
