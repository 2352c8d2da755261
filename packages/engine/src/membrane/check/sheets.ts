import { MembraneSolver } from '../equilibrium.ts';
import type { Material } from '../material.ts';
import type { Mesh } from '../mesh/mesh.ts';
import { structuredRectangle } from '../mesh/structured-rectangle.ts';
import type { Equilibrium, Held, MembraneQuestion } from '../question.ts';
import { KNIT } from './materials.ts';

/** A sheet of one material, line 1 along x, held nowhere. */
export const sheetOf = (mesh: Mesh, material: Material = KNIT, angle = 0): MembraneQuestion => {
  const count = mesh.triangles.length / 3;
  return {
    mesh,
    directions: new Float64Array(count).fill(angle),
    materialOf: new Uint16Array(count),
    materials: [material],
    cords: [],
    held: [],
    pins: [],
    slides: [],
  };
};

export type Place = readonly [number, number];
export type Carried = (x: number, y: number) => Place;

/** Nodes at places that `chosen` picks, carried to where `to` says. */
export const carriedTo = (
  mesh: Mesh,
  to: Carried,
  chosen: (x: number, y: number, node: number) => boolean,
): Held[] =>
  Array.from({ length: mesh.points.length / 2 }, (_, node) => {
    const [px, py] = [mesh.points[2 * node]!, mesh.points[2 * node + 1]!];
    const [x, y] = to(px, py);
    return chosen(px, py, node) ? [{ node, x, y }] : [];
  }).flat();

/** 100 × 80 mm with its inner nodes shaken a little, always the same way. */
export const shaken = (nx = 6, ny = 5, by = 0.2): Mesh => {
  const mesh = structuredRectangle(100, 80, nx, ny, 'alternate');
  for (let i = 1; i < nx; i++)
    for (let j = 1; j < ny; j++) {
      const k = 2 * (j * (nx + 1) + i);
      mesh.points[k]! += ((by * 100) / nx) * Math.sin(12.9 * k);
      mesh.points[k + 1]! += ((by * 80) / ny) * Math.cos(7.3 * k);
    }
  return mesh;
};

export const onBorder = (x: number, y: number): boolean =>
  x < 1e-9 || y < 1e-9 || x > 100 - 1e-9 || y > 80 - 1e-9;

/** Solves a question that has no faults. */
export const solved = (question: MembraneQuestion): Equilibrium => solverOf(question).solve();

export const solverOf = (question: MembraneQuestion): MembraneSolver => {
  const solver = MembraneSolver.of(question);
  if (!solver.ok) throw new Error(JSON.stringify(solver.faults));
  return solver.value;
};

export const largestDifference = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let largest = 0;
  for (let k = 0; k < a.length; k++) largest = Math.max(largest, Math.abs(a[k]! - b[k]!));
  return largest;
};
