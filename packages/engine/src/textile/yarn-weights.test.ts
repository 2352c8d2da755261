import fc from 'fast-check';
import { expect, test } from 'vitest';
import { WEIGHT_CLASSES } from './fibre-names.ts';
import { needleFromUs } from './needles.ts';
import {
  weightClassForGauge,
  weightClassForMetres,
  YARN_WEIGHTS,
  yarnWeight,
} from './yarn-weights.ts';

test('T4: the classes are those of the system, each at its number', () => {
  expect(YARN_WEIGHTS.map((row) => row.weightClass)).toEqual([...WEIGHT_CLASSES]);
  for (const each of WEIGHT_CLASSES) expect(yarnWeight(each).weightClass).toBe(each);
});

// Craft Yarn Council, Standard Yarn Weight System: stitches in stockinette to 4 inches.
test.each([
  [36, [0]],
  [30, [1]],
  [25, [2]],
  [24, [2, 3]],
  [22, [3]],
  [18, [4]],
  [14, [5]],
  [9, [6]],
  [5, [7]],
] as const)('T4: %d stitches over 4 in is class %j', (stitches, classes) => {
  expect(weightClassForGauge(stitches)).toEqual({ classes, inside: true });
});

test('T4: a gauge between two classes is given to the nearer one and said to be outside', () => {
  expect(weightClassForGauge(15.4)).toEqual({ classes: [5], inside: false });
  expect(weightClassForGauge(15.9)).toEqual({ classes: [4], inside: false });
  expect(weightClassForGauge(60)).toEqual({ classes: [0], inside: false });
});

test('T4: metres per 100 g find the class, and gaps go to the nearer', () => {
  expect(weightClassForMetres(220)).toEqual({ classes: [3], inside: true });
  expect(weightClassForMetres(450)).toEqual({ classes: [1], inside: true });
  expect(weightClassForMetres(30)).toEqual({ classes: [7], inside: true });
  expect(weightClassForMetres(122)).toEqual({ classes: [5], inside: false });
});

test('T4: a finer gauge never gives a thicker class', () => {
  const stitches = fc.double({ min: 2, max: 50, noNaN: true });
  fc.assert(
    fc.property(stitches, stitches, (a, b) => {
      const thickest = (x: number) => Math.max(...weightClassForGauge(x).classes);
      expect(thickest(Math.max(a, b))).toBeLessThanOrEqual(thickest(Math.min(a, b)));
    }),
  );
});

test('T4: the US sizes of each class are the millimetres beside them', () => {
  for (const { needleUs, needleMm } of YARN_WEIGHTS) {
    const ends = [
      [needleUs.low, needleMm.low],
      [needleUs.high, needleMm.high],
    ] as const;
    for (const [us, size] of ends) {
      if (us === null) continue;
      const converted = needleFromUs(us);
      expect(converted.ok && converted.value).toBe(size);
    }
  }
});

test('T4: no positive gauge is a bug', () => {
  expect(() => weightClassForGauge(0)).toThrow(RangeError);
  expect(() => weightClassForMetres(Number.NaN)).toThrow(RangeError);
});
