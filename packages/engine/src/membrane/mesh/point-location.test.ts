import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyStar, starQuestion } from './check/any-star.ts';
import { pointOf } from './check/mesh-facts.ts';
import { circle, question, ring, SQUARE } from './check/pieces.ts';
import { pointLocation } from './point-location.ts';
import { insideRing } from './segments.ts';
import { structuredRectangle } from './structured-rectangle.ts';
import { triangulate } from './triangulate.ts';

/** Seconds on an idle machine; others may share it. */
const PATIENCE = { timeout: 30_000 };

describe('point location', PATIENCE, () => {
  it('M17: a place is the weighted mean of the nodes of its triangle', () => {
    const places = fc.array(
      fc.tuple(
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.double({ min: -300, max: 300, noNaN: true }),
      ),
      { minLength: 20, maxLength: 20 },
    );
    let found = 0;
    fc.assert(
      fc.property(anyStar, places, (star, some) => {
        const result = triangulate(starQuestion(star));
        if (!result.ok) throw new Error('no mesh');
        const { mesh } = result.value;
        const location = pointLocation(mesh);
        for (const [x, y] of some) {
          const at = location.at(x, y);
          const inside =
            insideRing([x, y], star.outer) && !star.holes.some((h) => insideRing([x, y], h));
          expect(at !== undefined).toBe(inside);
          if (!at) continue;
          found++;
          const nodes = [0, 1, 2].map((i) => pointOf(mesh, mesh.triangles[3 * at.triangle + i]!));
          const mean = [0, 1].map((k) => nodes.reduce((s, p, i) => s + at.weights[i]! * p[k]!, 0));
          expect(Math.min(...at.weights)).toBeGreaterThanOrEqual(0);
          // Rounding of three products of numbers below 300.
          expect(Math.hypot(mean[0]! - x, mean[1]! - y)).toBeLessThan(1e-10);
        }
      }),
      { numRuns: 50 },
    );
    expect(found).toBeGreaterThan(100);
  });

  it('M17: every node is found at itself, on the border too', () => {
    const result = triangulate(question(SQUARE, { holes: [ring(circle(50, 50, 20, 9), 10)] }));
    if (!result.ok) throw new Error('no mesh');
    const { mesh } = result.value;
    const location = pointLocation(mesh);
    for (let n = 0; n < mesh.points.length / 2; n++) {
      const at = location.at(...pointOf(mesh, n))!;
      const own = [0, 1, 2].find((i) => mesh.triangles[3 * at.triangle + i] === n)!;
      expect(at.weights[own]).toBe(1);
    }
  });

  it('M17: outside the mesh, in a hole and at no number there is nothing', () => {
    const location = pointLocation(structuredRectangle(10, 20, 3, 3));
    expect(location.at(-0.001, 5)).toBeUndefined();
    expect(location.at(5, 20.001)).toBeUndefined();
    expect(location.at(Number.NaN, 5)).toBeUndefined();
    expect(location.at(10, 20)).toBeDefined();
  });
});
