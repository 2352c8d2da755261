import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { KNIT } from './check/materials.ts';
import { shaken, sheetOf } from './check/sheets.ts';
import { Frames } from './frames.ts';
import { linearLaw, stiffeningLaw } from './law.ts';
import { multiply } from './matrix.ts';
import type { Mesh } from './mesh/mesh.ts';
import { partsOf } from './parts.ts';
import { System } from './system.ts';

const cords = (mesh: Mesh) =>
  Array.from({ length: mesh.edges.length / 2 }, (_, edge) => ({
    edge,
    law: edge % 2 === 0 ? linearLaw(3) : stiffeningLaw({ slope: 1, stiffening: 1, limit: 0.9 }),
  }));

/** A sheet with cords on its border, a mat under it and nodes that slide askew, moved about. */
const moved = (stretch: number, noise: readonly number[]) => {
  const mesh = shaken(4, 3);
  const question = { ...sheetOf(mesh, KNIT, 0.4), cords: cords(mesh), friction: 1e-3 };
  const frames = new Frames(mesh.points.length / 2);
  frames.hold(0);
  frames.slide(2, Math.cos(0.7), Math.sin(0.7));
  frames.slide(9, Math.cos(-2), Math.sin(-2));
  const points = mesh.points.map((x, k) => stretch * x + noise[k % noise.length]!);
  return { mesh, system: new System(partsOf(question), frames), points, frames };
};

const noise = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), {
  minLength: 7,
  maxLength: 7,
});

test('ME10: forces are the slope of energy, stiffness the slope of forces: sheet, cords, mat, slides', () => {
  let taut = 0;
  let wrinkled = 0;
  fc.assert(
    fc.property(fc.double({ min: 0.8, max: 1.2, noNaN: true }), noise, noise, (s, n, way) => {
      const { system, points, frames, mesh } = moved(s, n);
      const direction = points.map((_, k) => way[(3 * k) % 7]! / 3);
      const at = (by: number) => {
        system.evaluate(
          points.map((x, k) => x + by * direction[k]!),
          'stiffness',
        );
        const { energy, forces } = system.totals;
        return { energy, forces: forces.slice(), branch: system.state.branch.join() };
      };
      const h = 1e-5;
      const [up, down, here] = [at(h), at(-h), at(0)];
      fc.pre(Number.isFinite(up.energy + down.energy + here.energy));
      const own = direction.slice();
      frames.intoOwn(own);
      const slope = own.reduce((sum, d, k) => sum + d * here.forces[k]!, 0);
      // h² of third derivatives and 1e-16 of a few hundred N·mm over h.
      expect(Math.abs((up.energy - down.energy) / (2 * h) - slope)).toBeLessThan(1e-4);
      taut += here.branch.includes('0') ? 1 : 0;
      wrinkled += here.branch.includes('1') ? 1 : 0;
      // Where a triangle changes branch, or a cord its tension, stiffness jumps.
      if (up.branch !== down.branch || !steady(mesh, points, direction, h)) return;
      const product = multiply(system.parts.symbolic.pattern, system.totals.stiffness, own);
      product.forEach((value, k) => {
        expect(Math.abs((up.forces[k]! - down.forces[k]!) / (2 * h) - value)).toBeLessThan(1e-3);
      });
    }),
    { numRuns: 300 },
  );
  expect(Math.min(taut, wrinkled)).toBeGreaterThan(50);
});

/** No cord passes its length at rest, no node its slip. */
const steady = (mesh: Mesh, points: Float64Array, d: Float64Array, h: number): boolean => {
  const side = (by: number) => {
    const at = (k: number) => points[k]! + by * d[k]!;
    const cordsTaut = Array.from({ length: mesh.edges.length / 2 }, (_, e) => {
      const [i, j] = [2 * mesh.edges[2 * e]!, 2 * mesh.edges[2 * e + 1]!];
      const rest = Math.hypot(
        mesh.points[j]! - mesh.points[i]!,
        mesh.points[j + 1]! - mesh.points[i + 1]!,
      );
      return Math.hypot(at(j) - at(i), at(j + 1) - at(i + 1)) > rest;
    });
    const slips = Array.from(
      { length: points.length / 2 },
      (_, i) =>
        Math.hypot(at(2 * i) - mesh.points[2 * i]!, at(2 * i + 1) - mesh.points[2 * i + 1]!) > 0.5,
    );
    return [...cordsTaut, ...slips].join();
  };
  return side(-2 * h) === side(2 * h);
};

test('ME10: no force in a sheet at rest', () => {
  const mesh = shaken();
  const system = new System(partsOf(sheetOf(mesh)), new Frames(mesh.points.length / 2));
  system.evaluate(mesh.points, 'stiffness');
  // Rounding of stretches by 1e-16.
  system.totals.forces.forEach((force) => {
    expect(Math.abs(force)).toBeLessThan(1e-13);
  });
});
