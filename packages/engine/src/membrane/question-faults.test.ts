import { expect, test } from 'vitest';
import { shaken, sheetOf } from './check/sheets.ts';
import { MembraneSolver, solveMembrane } from './equilibrium.ts';
import { linearLaw } from './law.ts';
import type { MembraneQuestion } from './question.ts';

const base = sheetOf(shaken());
const fields = (more: Partial<MembraneQuestion>) => {
  const result = solveMembrane({ ...base, ...more });
  return result.ok ? [] : result.faults.map((fault) => fault.field);
};

test('ME20: nodes that do not exist, are constrained twice or go nowhere', () => {
  expect(fields({ held: [{ node: 42, x: 0, y: 0 }] })).toEqual(['held[0].node']);
  expect(fields({ pins: [{ node: 1.5, x: 0, y: 0 }] })).toEqual(['pins[0].node']);
  const twice = { held: [{ node: 1, x: 0, y: 0 }], pins: [{ node: 1, x: 0, y: 0 }] };
  expect(fields(twice)).toEqual(['pins[0].node']);
  expect(fields({ held: [{ node: 1, x: Number.NaN, y: 0 }] })).toEqual(['held[0]']);
  expect(fields({ slides: [{ node: 1, ax: 1, ay: 2, bx: 1, by: 2 }] })).toEqual(['slides[0]']);
  expect(fields({ pins: [{ node: 1, x: 0, y: 0, outward: [0, 0] }] })).toEqual(['pins[0].outward']);
});

test('ME20: numbers, cords, materials and triangles out of range', () => {
  expect(fields({ friction: -1 })).toEqual(['friction']);
  expect(fields({ mostUse: 1 })).toEqual(['mostUse']);
  expect(fields({ cords: [{ edge: 99, law: linearLaw(1) }] })).toEqual(['cords[0].edge']);
  expect(fields({ cords: [{ edge: 0, law: linearLaw(0) }] })).toEqual(['cords[0].law']);
  expect(fields({ materials: [{ ...base.materials[0]!, shear: -1 }] })).toEqual([
    'materials[0].shear',
  ]);
  const flipped = { ...base.mesh, triangles: base.mesh.triangles.slice().reverse() };
  expect(fields({ mesh: flipped })).toEqual(['mesh.triangles[0]']);
});

test('ME20: other constraints on a kept sheet are checked as well', () => {
  const solver = MembraneSolver.of(base);
  if (!solver.ok) throw new Error('no solver');
  const none = { pins: [], slides: [] };
  expect(solver.value.constrain({ ...none, held: [{ node: -1, x: 0, y: 0 }] }).ok).toBe(false);
  expect(solver.value.constrain({ ...none, held: [{ node: 0, x: 0, y: 0 }] }).ok).toBe(true);
});

test('ME20: no constraint at all, or one, leaves the sheet as it lies', () => {
  for (const pins of [[], [{ node: 0, x: 30, y: -20 }]]) {
    const result = solveMembrane({ ...base, pins });
    if (!result.ok) throw new Error('fault');
    expect(result.value.converged).toBe(true);
    expect(result.value.energy).toBeLessThan(1e-9);
  }
});

test('ME20: arrays of another length than the mesh asks for are a bug', () => {
  expect(() => solveMembrane({ ...base, directions: new Float64Array(1) })).toThrow(RangeError);
  expect(() => solveMembrane({ ...base, materials: [] })).toThrow(RangeError);
});
