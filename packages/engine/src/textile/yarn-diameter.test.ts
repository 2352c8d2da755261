import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../units/index.ts';
import {
  PACKING,
  packingOf,
  peirceDiameter,
  tightnessFactor,
  USUAL_TIGHTNESS,
  yarnDiameter,
} from './yarn-diameter.ts';

// Closed form with the density of wool (Morton and Hearle 2008, 1.31); half of the last digit.
test.each([
  [100, 0.65, 0.387],
  [200, 0.65, 0.547],
  [400, 0.65, 0.773],
  [100, 0.3, 0.569],
  [200, 0.3, 0.805],
  [400, 0.3, 1.138],
])('T7: wool of %d tex packed to %d is %d mm thick', (tex, packing, diameter) => {
  expect(yarnDiameter({ tex, density: 1.31, packing })).toBeCloseTo(diameter, 3);
});

test('T7: Peirce: d is 0.00374 √tex cm, and 1/28 in at English count 1', () => {
  // Peirce 1937 as quoted; five digits are printed, so half a unit of the fifth in cm.
  expect(peirceDiameter(100) / 10).toBeCloseTo(0.0374, 4);
  // 1/(28 √Ne) in is rounded to two figures: within 1 %.
  expect(peirceDiameter(590.5) / 25.4).toBeCloseTo(1 / 28, 3);
});

test('T7: packing and diameter are inverse', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 4000, noNaN: true }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      (tex, packing) => {
        const diameter = yarnDiameter({ tex, density: 1.31, packing });
        expect(packingOf(tex, 1.31, diameter)).toBeCloseTo(packing, 12);
      },
    ),
  );
});

test('T7: the measured yarns have the packing that the range states', () => {
  // Ding et al. 2023: acrylic (1.18) of 77 tex, radius 0.524 mm, gives 0.076.
  expect(packingOf(77, 1.18, mm(2 * 0.524))).toBeCloseTo(PACKING.free.low, 3);
  // Singal et al. 2024: cotton (1.52) of 394 tex, 1.31 mm in the knit, 0.19; hard core at 53.9 % 0.66.
  expect(packingOf(394, 1.52, mm(1.31))).toBeCloseTo(0.19, 2);
  expect(packingOf(394, 1.52, mm(1.31 * 0.539))).toBeCloseTo(PACKING.squeezed.high, 2);
});

test('T7: tightness of 77 tex in loops of 7.23 mm is 12.1', () => {
  // Ding et al. 2023; three figures.
  const tightness = tightnessFactor(77, mm(7.23));
  expect(tightness).toBeCloseTo(12.1, 1);
  expect(tightness).toBeGreaterThan(USUAL_TIGHTNESS.low);
});

test('T7: no yarn is a bug', () => {
  expect(() => yarnDiameter({ tex: 100, density: 1.31, packing: 1.2 })).toThrow(RangeError);
  expect(() => tightnessFactor(100, mm(0))).toThrow(RangeError);
});
