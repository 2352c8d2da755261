import { expect, test } from 'vitest';
import { largestDifference, sheetOf, solved } from './check/sheets.ts';
import large from './fixtures/large-stretch.json' with { type: 'json' };
import linear from './fixtures/linear.json' with { type: 'json' };
import { Frames } from './frames.ts';
import { goalsOf, setFrames, waysLeft } from './goals.ts';
import { linearLaw, stiffeningLaw } from './law.ts';
import { multiply } from './matrix.ts';
import type { Mesh } from './mesh/mesh.ts';
import { answer, factorStiffness } from './newton.ts';
import { partsOf } from './parts.ts';
import { relaxation } from './relaxation.ts';
import { System } from './system.ts';

const meshOf = ({ points, triangles }: { points: number[]; triangles: number[] }): Mesh => ({
  points: Float64Array.from(points),
  triangles: Uint32Array.from(triangles),
  edges: new Uint32Array(),
  edgeTags: new Int32Array(),
});

test('ME8: large stretch of a sheet whose direction turns, as FreeFem++ has it on the same triangles', () => {
  const { along1, along2, coupling, shear } = large.laws;
  const question = {
    ...sheetOf(meshOf(large), {
      along1: stiffeningLaw(along1),
      along2: stiffeningLaw(along2),
      coupling,
      shear,
    }),
    directions: Float64Array.from(large.directions),
    held: large.held,
  };
  const result = solved(question);
  expect(result.converged).toBe(true);
  // Both solve the same discrete equations to rounding; places are written with ten decimals of mm.
  expect(largestDifference(result.points, large.places)).toBeLessThan(1e-8);
  expect(result.energy / large.energy).toBeCloseTo(1, 11);
  const stretch = large.stretch.flat();
  const ours = [...result.stretch].filter((_, k) => k % 3 < 2);
  expect(largestDifference(ours, stretch)).toBeLessThan(1e-9);
  expect(largestDifference(result.stress, large.stress.flat())).toBeLessThan(1e-9);
  // The case is large: a third of the triangles are stretched by more than a fifth.
  expect(stretch.filter((l) => l > 1.2).length).toBeGreaterThan(stretch.length / 3);
});

test('ME8: small strain at rest is linear orthotropic plane stress, as CalculiX has it', () => {
  const { y1, y2, coupling, shear } = linear.material;
  const material = { along1: linearLaw(y1), along2: linearLaw(y2), coupling, shear };
  const question = {
    ...sheetOf(meshOf(linear), material),
    directions: Float64Array.from(linear.directions),
    held: linear.held,
  };
  const system = new System(partsOf(question), new Frames(linear.points.length / 2));
  // So that the residual tension does not show.
  system.parts.sheet.relaxations = [relaxation(material, 1e-12)];
  const held = linear.held.map(({ node, x, y }) => ({
    node,
    x: linear.points[2 * node]! + x,
    y: linear.points[2 * node + 1]! + y,
  }));
  const goals = goalsOf({ held, pins: [], slides: [] }, new Float64Array(linear.points.length));
  setFrames(system.frames, goals);
  system.evaluate(question.mesh.points, 'taut-stiffness');
  const { moved } = waysLeft(goals, question.mesh.points);
  const step = answer(system, factorStiffness(system, question.mesh.points, 0), moved);
  // CalculiX writes seven digits of up to 10 mm and 0.3 N.
  expect(largestDifference(step, linear.moved)).toBeLessThan(2e-6);
  const forces = multiply(system.parts.symbolic.pattern, system.totals.stiffness, step);
  expect(largestDifference(forces, linear.forces)).toBeLessThan(1e-7);
});
