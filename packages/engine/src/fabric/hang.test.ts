import fc from 'fast-check';
import { expect, test } from 'vitest';
import { around, grams } from '../units/index.ts';
import { extensionAtLoad } from './extension.ts';
import { rowFor } from './extension-choice.ts';
import { EXTENSION_ROWS, type ExtensionRow } from './extension-data.ts';
import { hangExtension, topLoad } from './hang.ts';

/** A fabric that extends 2 per N/mm, in proportion, and narrows by half as much. */
const linear: ExtensionRow = {
  points: [0.05, 0.1, 0.3].map((load) => ({ load, extension: 2 * load })),
  otherWay: -0.1,
};

const masses = fc.double({ min: 50, max: 3000, noNaN: true });
const girths = fc.double({ min: 300, max: 2000, noNaN: true });
const rows = fc.constantFrom(...EXTENSION_ROWS);

test('H1: 1 kg around 1 m loads the top with 9.80665 N/m', () => {
  // source: 'cgpm-1901', conventional value of g.
  expect(topLoad(grams(1000), around(1000))).toBeCloseTo(9.80665e-3, 15);
});

test('H1: in a fabric of even stiffness the mean is half of the top', () => {
  // Closed form for a bar under its own weight: mean strain = ρ g L / 2 E.
  fc.assert(
    fc.property(masses, girths, (mass, girth) => {
      const hung = hangExtension({ mass: grams(mass), girth: around(girth), row: linear });
      expect(hung.top).toBeCloseTo(2 * hung.topLoad, 12);
      expect(hung.mean).toBeCloseTo(hung.top / 2, 12);
      expect(hung.narrowing).toBeCloseTo(-hung.mean / 2, 12);
    }),
  );
});

test('H1: the mean is what ten thousand separate rows add up to', () => {
  for (const row of EXTENSION_ROWS) {
    const hung = hangExtension({ mass: grams(1500), girth: around(900), row });
    const n = 10_000;
    let sum = 0;
    for (let i = 0; i < n; i++) sum += extensionAtLoad(row, (hung.topLoad * (i + 0.5)) / n);
    // Midpoint rule on a monotone function: within top / (2 n).
    expect(Math.abs(hung.mean - sum / n)).toBeLessThan(hung.top / (2 * n));
  }
});

test('H2: twice the mass on twice the girth hangs the same', () => {
  fc.assert(
    fc.property(masses, girths, rows, (mass, girth, row) => {
      const once = hangExtension({ mass: grams(mass), girth: around(girth), row });
      const twice = hangExtension({ mass: grams(mass * 2), girth: around(girth * 2), row });
      expect(twice.mean).toBeCloseTo(once.mean, 12);
    }),
  );
});

test('H2: more mass hangs further and narrower, and the top gives most', () => {
  fc.assert(
    fc.property(masses, girths, rows, (mass, girth, row) => {
      const light = hangExtension({ mass: grams(mass), girth: around(girth), row });
      const heavy = hangExtension({ mass: grams(mass * 1.2), girth: around(girth), row });
      expect(heavy.mean).toBeGreaterThan(light.mean);
      expect(heavy.narrowing).toBeLessThan(light.narrowing);
      expect(light.top).toBeGreaterThanOrEqual(light.mean);
    }),
  );
});

test('H2: what the shoulders carry does not hang', () => {
  const tube = { mass: grams(600), girth: around(1000), row: linear };
  expect(hangExtension({ ...tube, topShare: 0.5 }).mean).toBeCloseTo(
    hangExtension(tube).mean / 2,
    12,
  );
  expect(hangExtension({ ...tube, topShare: 0 })).toMatchObject({ mean: 0, top: 0 });
  expect(Math.abs(hangExtension({ ...tube, topShare: 0 }).narrowing)).toBe(0);
});

test('H2: loads beyond what was read are said to be so', () => {
  const row = rowFor('garter', 'wool', 'length').row;
  expect(hangExtension({ mass: grams(600), girth: around(1000), row }).beyondReadings).toBe(false);
  expect(hangExtension({ mass: grams(9000), girth: around(200), row }).beyondReadings).toBe(true);
});

test('H2: garter hangs further than stockinette, as it is softer along its length', () => {
  // Singal et al. 2024: along the length stockinette is the stiffest and garter among the softest.
  const hung = (stitch: 'garter' | 'stockinette') =>
    hangExtension({
      mass: grams(600),
      girth: around(1000),
      row: rowFor(stitch, 'wool', 'length').row,
    });
  expect(hung('garter').mean).toBeGreaterThan(2 * hung('stockinette').mean);
});

test('H2: no girth is a bug', () => {
  expect(() => hangExtension({ mass: grams(1), girth: around(0), row: linear })).toThrow(
    RangeError,
  );
});
