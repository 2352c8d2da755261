import { GARMENT_KINDS, type OutlineSizes, outlineOf } from '@dryflat/engine/garment';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingOf } from './drawn-piece.ts';
import { NARROW, type Plan, planOf } from './plan.ts';

const usual = (kind: (typeof GARMENT_KINDS)[number]): OutlineSizes => {
  const filled = outlineOf(kind, {}).assumed.map((each) => [each.landmark, each.mm]);
  return Object.fromEntries([...filled, ['rib-depth', 40]]) as OutlineSizes;
};

const scaled = (sizes: OutlineSizes, by: number): OutlineSizes =>
  Object.fromEntries(Object.entries(sizes).map(([id, mm]) => [id, mm * by])) as OutlineSizes;

const forecastOf = (sizes: OutlineSizes) => ({
  p05: scaled(sizes, 0.94),
  p50: scaled(sizes, 0.98),
  p95: scaled(sizes, 1.03),
});

const labelsOf = (plan: Plan) =>
  plan.cells.flatMap((cell) =>
    cell.dimensions.map(({ landmark, label }) => ({
      landmark,
      left: cell.at.x + label.x,
      top: cell.at.y + label.y,
      right: cell.at.x + label.x + label.width,
      bottom: cell.at.y + label.y + label.height,
    })),
  );

const anyPlan = fc
  .record({
    kind: fc.constantFrom(...GARMENT_KINDS),
    width: fc.integer({ min: 300, max: 1400 }),
    label: fc.record({
      width: fc.integer({ min: 44, max: 110 }),
      height: fc.integer({ min: 44, max: 70 }),
    }),
  })
  .map(({ kind, width, label }) => {
    const sizes = usual(kind);
    const { pieces } = drawingOf(kind, sizes, forecastOf(sizes));
    const tallest = width < NARROW ? 1.15 * width : 0.45 * width;
    return planOf({ pieces, width, tallest, sizeOf: () => label, captionHeight: 32 });
  });

/** Half a px is less than a screen shows. */
const HALF = 0.5;

describe('sheet of a garment', () => {
  it('PA1: no two labels overlap and none leaves the sheet', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const labels = labelsOf(plan);
        labels.forEach((a, i) => {
          expect(a.left, a.landmark).toBeGreaterThan(-HALF);
          expect(a.top, a.landmark).toBeGreaterThan(-HALF);
          expect(a.right, a.landmark).toBeLessThan(plan.width + HALF);
          expect(a.bottom, a.landmark).toBeLessThan(plan.height + HALF);
          for (const b of labels.slice(i + 1)) {
            const beside = a.right <= b.left + HALF || b.right <= a.left + HALF;
            const below = a.bottom <= b.top + HALF || b.bottom <= a.top + HALF;
            expect(beside || below, `${a.landmark} and ${b.landmark}`).toBe(true);
          }
        });
      }),
    );
  });

  it('PA2: lines are drawn to the scale that all pieces share', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        for (const cell of plan.cells)
          for (const d of cell.dimensions) {
            const source = cell.piece.dimensions.find((each) => each.landmark === d.landmark)!;
            const length = Math.hypot(d.to.x - d.from.x, d.to.y - d.from.y);
            // 1e-6: rounding of px in the thousands.
            expect(Math.abs(length - source.mm * plan.scale), d.landmark).toBeLessThan(1e-6);
          }
      }),
    );
  });

  it('PA3: what was neither wanted nor forecast has no label', () => {
    const { pieces, main } = drawingOf('vest', { chest: usual('vest').chest! }, null);
    expect(pieces.flatMap((piece) => piece.dimensions.map((d) => d.landmark))).toEqual(['chest']);
    expect(main.assumed.map((each) => each.landmark)).toContain('body-length');
  });

  it('PA4: a wanted outline is left out where only a forecast is known', () => {
    const { pieces } = drawingOf('hat', {}, forecastOf(usual('hat')));
    expect(pieces.map((piece) => [piece.wanted, piece.forecast?.name])).toEqual([[null, 'hat']]);
  });
});
