import type { MatStep } from '@dryflat/record';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameAround, outlineOf, referencesOf } from './step-frame.ts';

const step = (xMm: number, yMm: number, ...names: string[]): MatStep => ({
  xMm,
  yMm,
  kind: 'straight',
  edge: 'selvedge',
  from: names.map((name) => ({ name, mm: 1 })),
  pullN: 0,
});

const lies = {
  mat: { widthMm: 900, heightMm: 600, tileMm: 300 },
  outline: [0, 0, 100, 0, 100, 50],
  reaches: [],
};

test('PN6: everything that a step needs is in sight', () => {
  const place = fc.tuple(
    fc.double({ min: 0, max: 2000, noNaN: true }),
    fc.double({ min: 0, max: 2000, noNaN: true }),
  );
  const size = fc.record({
    width: fc.integer({ min: 200, max: 1300 }),
    height: fc.integer({ min: 120, max: 900 }),
  });
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 9 }), size, (places, size) => {
      const { x, y, scale } = frameAround(places, size, 20);
      for (const [px, py] of places) {
        // A millionth of a px for rounding.
        expect((px - x) * scale).toBeGreaterThanOrEqual(20 - 1e-6);
        expect((px - x) * scale).toBeLessThanOrEqual(size.width - 20 + 1e-6);
        expect((py - y) * scale).toBeGreaterThanOrEqual(20 - 1e-6);
        expect((py - y) * scale).toBeLessThanOrEqual(size.height - 20 + 1e-6);
      }
    }),
  );
});

test('PN6: references are found where they stand, whatever they are', () => {
  const steps = [
    step(10, 20, 'top right corner of the mat', 'tile crossing 2 from the left, 1 from the top'),
    step(50, 60, 'pin 1', 'something else'),
  ];
  expect(referencesOf({ steps, lies }, steps[0]!)).toEqual([
    [900, 0],
    [600, 300],
  ]);
  expect(referencesOf({ steps, lies }, steps[1]!)).toEqual([[10, 20], null]);
});

test('PN6: a work without its outline is drawn by its steps', () => {
  expect(outlineOf({ lies, steps: [] })).toEqual([
    [0, 0],
    [100, 0],
    [100, 50],
  ]);
  expect(outlineOf({ steps: [step(1, 2)] })).toEqual([[1, 2]]);
});
