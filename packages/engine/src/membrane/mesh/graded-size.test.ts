import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOf } from './check/mesh-facts.ts';
import { BACK, question } from './check/pieces.ts';
import { gradedSize } from './graded-size.ts';
import type { MeshQuestion, Xy } from './mesh.ts';
import { meshQuality } from './mesh-quality.ts';
import { distanceToSegment } from './segments.ts';
import { triangulate } from './triangulate.ts';

const meshed = (q: MeshQuestion) => {
  const result = triangulate(q);
  if (!result.ok) throw new Error('no mesh');
  expect(result.value.converged).toBe(true);
  return result.value.mesh;
};

/** Seconds on an idle machine; others may share it. */
const PATIENCE = { timeout: 30_000 };

describe('size of a mesh', PATIENCE, () => {
  it('M18: a graded size is the least of coarse and fine plus grade times distance', () => {
    const coordinate = fc.double({ min: -50, max: 150, noNaN: true });
    const place = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(
        fc.array(fc.array(place, { minLength: 2, maxLength: 5 }), { maxLength: 3 }),
        fc.array(place, { maxLength: 5 }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.array(place, { minLength: 20, maxLength: 20 }),
        (edges, pins, grade, places) => {
          const field = gradedSize({ edges, pins, coarse: 20, fine: { edges: 5, pins: 2 }, grade });
          for (const p of places) {
            const lines = edges.flatMap((e) =>
              e.slice(1).map((b, i) => 5 + grade * distanceToSegment(p, e[i]!, b)),
            );
            const points = pins.map((q) => 2 + grade * Math.hypot(p[0] - q[0], p[1] - q[1]));
            // Rounding of distances below 300.
            expect(field(...p)).toBeCloseTo(Math.min(20, ...lines, ...points), 10);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('M18: numbers that make no field throw', () => {
    const fine = { edges: [], pins: [], coarse: 10, fine: 5, grade: 0.2 };
    for (const bad of [
      { fine: 0 },
      { fine: 11 },
      { grade: 0 },
      { grade: Infinity },
      { coarse: NaN },
    ])
      expect(() => gradedSize({ ...fine, ...bad })).toThrow('no size field');
    expect(gradedSize(fine)(3, 4)).toBe(10);
  });

  it('M19: mean edges are the wanted size, and half the size makes four times the triangles', () => {
    const at = (size: number) => meshQuality(meshed(question(BACK, { size })));
    const [coarse, middle, fine] = [at(20), at(10), at(5)];
    // Angles and straight edges cost a little size; the finer, the less.
    expect(Math.abs(middle.meanEdge / 10 - 1)).toBeLessThan(0.1);
    expect(Math.abs(fine.meanEdge / 5 - 1)).toBeLessThan(0.08);
    // The armhole and the neck are given finer than 20 mm, which leaves less than four at first.
    expect(middle.triangles / coarse.triangles).toBeGreaterThan(3);
    expect(Math.abs(fine.triangles / middle.triangles - 4)).toBeLessThan(0.4);
    // Nothing is longer than the diameter of the largest circle, 2 × 0.77 of the size.
    expect(fine.longestEdge).toBeLessThan(1.55 * 5);
  });

  it('M19: a graded mesh is fine at pins and edges and coarse between', () => {
    const pins: Xy[] = [
      [0, 0],
      [520, 0],
      [260, 300],
    ];
    const size = gradedSize({
      edges: [[...BACK, BACK[0]!]],
      pins,
      coarse: 30,
      fine: { edges: 12, pins: 4 },
      grade: 0.3,
    });
    const mesh = meshed(question(BACK, { size, nodes: pins }));
    const shares: number[] = [];
    for (let e = 0; e < mesh.triangles.length; e++) {
      const p = pointOf(mesh, mesh.triangles[e]!);
      const q = pointOf(mesh, mesh.triangles[e % 3 === 2 ? e - 2 : e + 1]!);
      const wanted = size((p[0] + q[0]) / 2, (p[1] + q[1]) / 2);
      shares.push(Math.hypot(p[0] - q[0], p[1] - q[1]) / wanted);
    }
    const mean = shares.reduce((a, b) => a + b, 0) / shares.length;
    // Corners of the armhole and neck as given are finer than asked, which pulls the mean down.
    expect(mean).toBeGreaterThan(0.75);
    expect(mean).toBeLessThan(1.1);
    // A triangle is judged by the mean of the sizes at its nodes, which a grade of 0.3 spreads by
    // a fifth either way: 1.54 × 1.2.
    expect(Math.max(...shares)).toBeLessThan(1.85);
  });
});

it('M18: an edge too short to square is a point', () => {
  const tiny = [
    [0, 0],
    [0, -1.5717277847026288e-162],
  ] as const;
  const size = gradedSize({ edges: [tiny], pins: [], coarse: 20, fine: 5, grade: 0.25 });
  expect(size(0, 0)).toBe(5);
  expect(size(0, 20)).toBe(10);
});
