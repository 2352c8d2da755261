import { expect, test } from 'vitest';
import { type Rgb, rampPixels, stretchColour } from './stretch-scale.ts';

const steps = Array.from({ length: 21 }, (_, i) => stretchColour(i / 20));
const decoded = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;
/** CIE 1976 lightness from relative luminance. */
const lightness = (y: number): number => 116 * Math.cbrt(y) - 16;

/** Linear RGB as seen without red or green cones: matrices of Viénot, Brettel and Mollon 1999, from memory. */
const SEEN = {
  everyone: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  'without red cones': [0.11238, 0.88762, 0, 0.11238, 0.88762, 0, 0.00401, -0.00401, 1],
  'without green cones': [0.29275, 0.70725, 0, 0.29275, 0.70725, 0, -0.02234, 0.02234, 1],
} as const;

test.each(Object.entries(SEEN))('M1: the scale rises in lightness, seen by %s', (_, m) => {
  const seen = steps.map((colour) => {
    const [r, g, b] = colour.map(decoded) as [number, number, number];
    const row = (k: number) => m[k]! * r + m[k + 1]! * g + m[k + 2]! * b;
    return lightness(luminance([row(0), row(3), row(6)]));
  });
  const rises = seen.slice(1).map((each, i) => each - seen[i]!);
  // One twentieth of the scale is at least 2 of CIE lightness, of which 1 is about what is just seen.
  expect(Math.min(...rises)).toBeGreaterThan(2);
});

test('M1: no colour of the scale lies outside what a screen shows', () => {
  for (const colour of steps)
    for (const v of colour) {
      expect(v).toBeGreaterThan(0);
      expect(v).toBeLessThan(1);
    }
});

test('M1: what lies outside 0 to 1 has the colour of the nearer end', () => {
  expect(stretchColour(-1)).toEqual(stretchColour(0));
  expect(stretchColour(2)).toEqual(stretchColour(1));
  const pixels = rampPixels(8);
  expect([...pixels.slice(28)]).toEqual([...steps[20]!.map((v) => Math.round(255 * v)), 255]);
});
