import { describe, expect, test } from 'vitest';
import { EXTENSION_ROWS } from '../extension-data.ts';
import { fitStrip, nameOf } from './fit-strips.ts';
import { loadAt } from './law.ts';
import { readExtension } from './strip.ts';
import { STRIPS } from './strips.ts';

// Readings: open data set of Singal et al. 2024 (github.com/sabetta/stitch-by-stitch), pulls 2 to 5.

/**
 * Rib across in acrylic is met least well, 5.0 points at the smallest load: its readings ask for a rest 43 %
 * narrower than the first frame, which nobody saw, and a fifth is the most that is counted from.
 */
const WITHIN: Readonly<Record<string, number>> = { 'acrylic rib-1x1 width': 5.1 };

describe.each(EXTENSION_ROWS.map((row) => ({ name: nameOf(row), row })))(
  '$name',
  ({ name, row }) => {
    const strip = STRIPS[name]!;

    const within = WITHIN[name] ?? 3;
    test(`W4: the committed constants meet every reading within ${within} points of extension`, () => {
      const off = row.points.map(({ load, extension }) =>
        Math.abs(100 * (readExtension(strip, load) - extension)),
      );
      expect(Math.max(...off)).toBeLessThan(within);
      // One that is met better is held to it.
      if (name in WITHIN) expect(Math.max(...off)).toBeGreaterThan(within - 0.2);
    });

    test('W6: it is not counted from a rest more than a fifth below what was read', () => {
      expect(strip.preStretch).toBeLessThanOrEqual(0.2);
    });

    test('W5: each inner reading left out of the fit is foretold within 5 points', () => {
      for (let k = 1; k < row.points.length - 1; k++) {
        const others = row.points.filter((_, j) => j !== k);
        expect(Math.abs(fitStrip(row, others).residuals[k]!)).toBeLessThan(5);
      }
    });

    test('W6: the first frame carries no more than the few N/m that the data set tells of', () => {
      // "Zero strain = first frame of pull 2", which already carries a few N/m: 5 N/m at most here.
      expect(loadAt(strip, strip.preStretch)).toBeLessThan(0.005);
    });

    test('W7: the constants are what the fit gives again', () => {
      const again = fitStrip(row).strip;
      // Written to six digits.
      for (const key of ['slope', 'stiffening', 'limit', 'preStretch'] as const)
        expect(strip[key] / again[key]).toBeCloseTo(1, 4);
    });
  },
);

test('W8: stiffness at rest orders the patterns as published', () => {
  // Singal et al. 2024: width stockinette > garter > seed > rib; length stockinette > rib > garter, seed last.
  const slope = (yarn: string, stitch: string, d: string) =>
    STRIPS[`${yarn} ${stitch} ${d}`]!.slope;
  const width = ['stockinette', 'garter', 'seed', 'rib-1x1'].map((s) =>
    slope('acrylic', s, 'width'),
  );
  const length = ['stockinette', 'rib-1x1', 'garter', 'seed'].map((s) =>
    slope('acrylic', s, 'length'),
  );
  for (const order of [width, length]) expect(order).toEqual(order.toSorted((a, b) => b - a));
});
