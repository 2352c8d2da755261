import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../../scripts/lib/draws.mjs';
import { materials } from './check/materials.ts';
import { sheetOf, solverOf } from './check/sheets.ts';
import { linearLaw } from './law.ts';
import { structuredRectangle } from './mesh/structured-rectangle.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const RUNS = draws(400, 10_000);

/** Small sheets with anything at all done to their nodes: pulled, squeezed, crossed over, twisted. */
const problems = fc.record({
  nx: fc.integer({ min: 1, max: 3 }),
  ny: fc.integer({ min: 1, max: 3 }),
  width: number(5, 500),
  height: number(5, 500),
  angle: number(-4, 4),
  // Couplings beyond those that make W convex in C are among them.
  material: materials(0.3),
  friction: fc.constantFrom(0, 0, 1e-4),
  cord: fc.boolean(),
  size: fc.constantFrom(0.05, 0.1, 0.1, 0.2, 0.8),
  moves: fc.array(
    fc.record({
      kind: fc.constantFrom('held', 'pin', 'pin', 'slide', 'none', 'none'),
      x: number(-0.6, 1.2),
      y: number(-0.6, 1.2),
    }),
    { minLength: 16, maxLength: 16 },
  ),
});

/** Triangles that run clockwise. */
const faceDown = (triangles: Uint32Array, points: Float64Array): number => {
  let count = 0;
  for (let e = 0; e < triangles.length; e += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 2 * triangles[e + k]!) as [number, number, number];
    const [ux, uy] = [points[b]! - points[a]!, points[b + 1]! - points[a + 1]!];
    const [vx, vy] = [points[c]! - points[a]!, points[c + 1]! - points[a + 1]!];
    if (ux * vy - uy * vx < 0) count++;
  }
  return count;
};

test('ME19: whatever is asked, the answer is finite, and balanced or said not to be', () => {
  let [converged, gave, crossed, asked] = [0, 0, 0, 0];
  fc.assert(
    fc.property(problems, (p) => {
      const mesh = structuredRectangle(p.width, p.height, p.nx, p.ny, 'alternate');
      const constrained = Array.from({ length: mesh.points.length / 2 }, (_, node) => {
        const [x, y] = [mesh.points[2 * node]!, mesh.points[2 * node + 1]!];
        const move = p.moves[node]!;
        return {
          kind: move.kind,
          node,
          x: x + p.size * move.x * p.width,
          y: y + p.size * move.y * p.height,
        };
      });
      const of = (kind: string) =>
        constrained.filter((one) => one.kind === kind).map(({ node, x, y }) => ({ node, x, y }));
      const question = {
        ...sheetOf(mesh, p.material, p.angle),
        cords: p.cord ? [{ edge: 0, law: linearLaw(1) }] : [],
        friction: p.friction,
        held: of('held'),
        pins: of('pin'),
        slides: of('slide').map(({ node, x, y }) => ({ node, ax: x, ay: y, bx: x + 1, by: y + 2 })),
      };
      const result = solverOf(question).solve();
      for (const part of [result.points, result.reactions, result.stretch, result.stress])
        expect(part.every(Number.isFinite)).toBe(true);
      expect(Number.isFinite(result.energy + result.residual)).toBe(true);
      expect(result.use.every((use) => use >= 0 && use < 1)).toBe(true);
      asked++;
      converged += result.converged ? 1 : 0;
      const turned = faceDown(mesh.triangles, result.points);
      crossed += turned > 0 ? 1 : 0;
      expect(result.turned).toBe(turned);
      if (turned > 0) expect(result.converged).toBe(false);
      gave += result.gaveWay.length > 0 ? 1 : 0;
      // What arrived is where it was to go; what did not is named.
      const named = new Set(result.gaveWay.map(({ node }) => node));
      const released = new Set(result.released.map((k) => question.pins[k]!.node));
      for (const { node, x, y } of [...question.held, ...question.pins]) {
        if (named.has(node) || released.has(node)) continue;
        // Ways shorter than 1e-13 of the piece are not taken.
        expect(
          Math.hypot(result.points[2 * node]! - x, result.points[2 * node + 1]! - y),
        ).toBeLessThan(1e-9);
      }
    }),
    { numRuns: RUNS, seed: 20, endOnFailure: true },
  );
  // Nodes that are held across each other leave no way to lie face up.
  expect(converged + crossed).toBeGreaterThan(0.9 * asked);
  expect(converged).toBeGreaterThan(0.8 * asked);
  expect(gave).toBeGreaterThan(0.05 * asked);
});
