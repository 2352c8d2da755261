import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { KNIT } from './check/materials.ts';
import { carriedTo, largestDifference, onBorder, shaken, sheetOf, solved } from './check/sheets.ts';
import type { Mesh } from './mesh/mesh.ts';
import type { MembraneQuestion } from './question.ts';

const base = (stretch: number, bow: number): MembraneQuestion => {
  const mesh = shaken();
  const to = (x: number, y: number) =>
    [stretch * x + bow * Math.sin(y / 20), 1.1 * y + bow * Math.cos(x / 30)] as const;
  // Every other node of the border and its corners: a free corner may fold over, which costs next to
  // nothing, and rounding would choose.
  const corners = [0, 6, 35, 41];
  const pinned = (node: number) => node % 2 === 0 || corners.includes(node);
  const pins = carriedTo(mesh, to, (x, y, node) => onBorder(x, y) && pinned(node));
  return { ...sheetOf(mesh, KNIT, 0.3), pins };
};

type Map2 = (x: number, y: number) => readonly [number, number];

const movedMesh = (mesh: Mesh, map: Map2, flip = false): Mesh => {
  const points = mesh.points.slice();
  for (let k = 0; k < points.length; k += 2) points.set(map(points[k]!, points[k + 1]!), k);
  const triangles = mesh.triangles.slice();
  if (flip)
    for (let k = 0; k < triangles.length; k += 3)
      triangles.set([mesh.triangles[k + 1]!, mesh.triangles[k]!], k);
  return { ...mesh, points, triangles };
};

const movedPins = (q: MembraneQuestion, map: Map2) =>
  q.pins.map((pin) => {
    const [x, y] = map(pin.x, pin.y);
    return { ...pin, x, y };
  });

const apply = (points: Float64Array, map: Map2): Float64Array => {
  const out = points.slice();
  for (let k = 0; k < out.length; k += 2) out.set(map(points[k]!, points[k + 1]!), k);
  return out;
};

const cases = fc.tuple(
  fc.double({ min: 1.02, max: 1.35, noNaN: true }),
  fc.double({ min: -3, max: 3, noNaN: true }),
);
/** Residual tolerance over the least stiffness where wrinkles are: 1e-9 N over 1e-5 N/mm. */
const CLOSE = 1e-4;

test('ME18: a turned and moved piece with turned lines gives the turned answer', () => {
  fc.assert(
    fc.property(cases, fc.double({ min: -4, max: 4, noNaN: true }), ([s, b], angle) => {
      const [c, d] = [Math.cos(angle), Math.sin(angle)];
      const map: Map2 = (x, y) => [c * x - d * y + 7, d * x + c * y - 5];
      const q = base(s, b);
      const turned = {
        ...q,
        mesh: movedMesh(q.mesh, map),
        directions: q.directions.map((a) => a + angle),
        pins: movedPins(q, map),
      };
      const [here, there] = [solved(q), solved(turned)];
      expect(there.converged).toBe(here.converged);
      expect(largestDifference(there.points, apply(here.points, map))).toBeLessThan(CLOSE);
      expect(there.energy / here.energy).toBeCloseTo(1, 9);
    }),
    { numRuns: 25 },
  );
});

test('ME18: a mirrored piece gives the mirrored answer', () => {
  fc.assert(
    fc.property(cases, ([s, b]) => {
      const map: Map2 = (x, y) => [100 - x, y];
      const q = base(s, b);
      const mirrored = {
        ...q,
        mesh: movedMesh(q.mesh, map, true),
        directions: q.directions.map((a) => Math.PI - a),
        pins: movedPins(q, map),
      };
      const [here, there] = [solved(q), solved(mirrored)];
      expect(largestDifference(there.points, apply(here.points, map))).toBeLessThan(CLOSE);
      expect(there.energy / here.energy).toBeCloseTo(1, 9);
    }),
    { numRuns: 25 },
  );
});

test('ME18: a piece k times as large has places and pulls k times as large, energy k² times', () => {
  fc.assert(
    fc.property(cases, fc.double({ min: 0.1, max: 10, noNaN: true }), ([s, b], k) => {
      const map: Map2 = (x, y) => [k * x, k * y];
      const q = base(s, b);
      const scaled = { ...q, mesh: movedMesh(q.mesh, map), pins: movedPins(q, map) };
      const [here, there] = [solved(q), solved(scaled)];
      expect(largestDifference(there.points, apply(here.points, map)) / k).toBeLessThan(CLOSE);
      expect(there.energy / (k * k * here.energy)).toBeCloseTo(1, 9);
      const pulls = here.reactions.map((force) => k * force);
      expect(largestDifference(there.reactions, pulls) / k).toBeLessThan(1e-6);
    }),
    { numRuns: 25 },
  );
});
