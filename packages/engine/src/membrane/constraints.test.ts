import { describe, expect, test } from 'vitest';
import { LINEAR } from './check/materials.ts';
import {
  carriedTo,
  largestDifference,
  onBorder,
  shaken,
  sheetOf,
  solved,
  solverOf,
} from './check/sheets.ts';
import { SLIP } from './friction.ts';
import { linearLaw } from './law.ts';
import { structuredRectangle } from './mesh/structured-rectangle.ts';

const left = (x: number) => x < 1e-9;
const right = (x: number) => x > 100 - 1e-9;

describe('ME13: held nodes, pins and wires', () => {
  test('are where they were put, and their forces balance', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [x, y], left);
    const pins = carriedTo(mesh, (x, y) => [1.2 * x, 1.05 * y + 3], right);
    const result = solved({ ...sheetOf(mesh), held, pins });
    expect(result.converged).toBe(true);
    for (const { node, x, y } of [...held, ...pins])
      expect([result.points[2 * node], result.points[2 * node + 1]]).toEqual([x, y]);
    const sum = (axis: 0 | 1) =>
      result.reactions.reduce((total, force, k) => (k % 2 === axis ? total + force : total), 0);
    // Residuals of some 40 free nodes, each below 1e-10 of some 8 N.
    expect(Math.abs(sum(0)) + Math.abs(sum(1))).toBeLessThan(1e-7);
  });

  test('a wire keeps its nodes on its line and pulls across it only', () => {
    const mesh = shaken();
    const held = carriedTo(mesh, (x, y) => [x, y], left);
    const [ax, ay, bx, by] = [118, 0, 124, 60];
    const slides = carriedTo(mesh, (x, y) => [x, y], right).map(({ node }) => ({
      node,
      ax,
      ay,
      bx,
      by,
    }));
    const result = solved({ ...sheetOf(mesh), held, slides });
    expect(result.converged).toBe(true);
    const line = Math.hypot(bx - ax, by - ay);
    slides.forEach(({ node }, k) => {
      const [x, y] = [result.points[2 * node]!, result.points[2 * node + 1]!];
      expect(Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / line).toBeLessThan(1e-10);
      const at = 2 * (held.length + k);
      const along = result.reactions[at]! * (bx - ax) + result.reactions[at + 1]! * (by - ay);
      expect(Math.abs(along) / line).toBeLessThan(1e-8);
    });
  });

  test('a pin that would push lets go, and the sheet lies beyond it', () => {
    const mesh = shaken();
    const held = carriedTo(
      mesh,
      (x, y) => [1.2 * x, 1.1 * y],
      (x, y) => left(x) || right(x) || y > 79.9,
    );
    // The middle of the lower edge is pinned 8 mm inside of where it goes by itself.
    const middle = 3;
    const free = solved({ ...sheetOf(mesh), held });
    const goes = [free.points[2 * middle]!, free.points[2 * middle + 1]!] as const;
    const pins = [{ node: middle, x: goes[0], y: goes[1] + 8 }];
    const result = solved({ ...sheetOf(mesh), held, pins });
    expect(result.released).toEqual([0]);
    expect(result.converged).toBe(true);
    expect([...result.reactions.slice(-2)]).toEqual([0, 0]);
    // The same equilibrium but for the tolerance of the residual.
    expect(largestDifference(result.points, free.points)).toBeLessThan(1e-6);
    // Pinned outside of where it goes, it pulls.
    const pulled = solved({ ...sheetOf(mesh), held, pins: [{ ...pins[0]!, y: goes[1] - 4 }] });
    expect(pulled.released).toEqual([]);
    expect(pulled.reactions.at(-1)).toBeLessThan(0);
  });

  test('a pin that let go is caught when the sheet comes back to it', () => {
    const mesh = shaken();
    const held = carriedTo(
      mesh,
      (x, y) => [1.2 * x, 1.1 * y],
      (x, y) => left(x) || right(x) || y > 79.9,
    );
    // By itself the middle of the lower edge goes to 9.1 mm.
    const pins = [{ node: 3, x: 60, y: 14 }];
    const solver = solverOf({ ...sheetOf(mesh), held, pins });
    expect(solver.solve().released).toEqual([0]);
    // The sides now go up so far that the edge would come inside of the pin.
    const up = held.map((h) => ({ ...h, y: h.y + 14 }));
    expect(solver.constrain({ held: up, pins, slides: [] }).ok).toBe(true);
    const result = solver.solve();
    expect(result.released).toEqual([]);
    expect(result.reactions.at(-1)).toBeLessThan(0);
  });
});

test('ME14: a cord on a free edge bears by its own law, and none when it is slack', () => {
  // One row of cells pulled lengthwise between ends that slide: sheet and cords side by side.
  const mesh = structuredRectangle(100, 10, 10, 1);
  const along = (y: number, tag: number) =>
    Array.from({ length: mesh.edges.length / 2 }, (_, edge) => edge).filter(
      (edge) => mesh.edgeTags[edge] === tag && y >= 0,
    );
  const cords = [...along(0, 0), ...along(10, 2)].map((edge) => ({ edge, law: linearLaw(2) }));
  const pull = (stretch: number, withCords: boolean) => {
    const at = (x: number) => ({ ax: x, ay: 0, bx: x, by: 1 });
    const slides = carriedTo(
      mesh,
      (x, y) => [x, y],
      (x, y) => right(x) || (left(x) && y > 1),
    ).map(({ node, x }) => ({ node, ...at(x * stretch) }));
    const held = [{ node: 0, x: 0, y: 0 }];
    const result = solved({
      ...sheetOf(mesh, LINEAR),
      cords: withCords ? cords : [],
      held,
      slides,
    });
    expect(result.converged).toBe(true);
    return result.reactions.reduce(
      (sum, force, k) => (k % 2 === 0 && force > 0 ? sum + force : sum),
      0,
    );
  };
  // Two cords of 2 N per unit strain.
  expect(pull(1.1, true) - pull(1.1, false)).toBeCloseTo(2 * 2 * 0.1, 6);
  expect(Math.abs(pull(0.9, true) - pull(0.9, false))).toBeLessThan(1e-9);
});

describe('ME15: a mat that holds', () => {
  const mesh = structuredRectangle(100, 80, 10, 8);
  const held = carriedTo(
    mesh,
    (x, y) => [1.1 * x, y],
    (x) => left(x) || right(x),
  );

  test('a node bears no more than its area does, and less the less the sheet moves', () => {
    const friction = 2e-4;
    const loose = solved({ ...sheetOf(mesh), held });
    const gripped = solved({ ...sheetOf(mesh), held, friction });
    expect(gripped.converged).toBe(true);
    const work = (points: Float64Array) =>
      points.reduce((sum, x, k) => sum + Math.abs(x - mesh.points[k]!), 0);
    expect(work(gripped.points)).toBeLessThan(work(loose.points));
    // In all the mat bears at most friction · area, which the pulls at both sides differ by.
    const both = gripped.reactions.reduce((sum, f, k) => (k % 2 === 0 ? sum + f : sum), 0);
    expect(Math.abs(both)).toBeLessThanOrEqual(friction * 100 * 80);
    expect(Math.abs(both)).toBeGreaterThan(0.3 * friction * 100 * 80);
  });

  test('what it holds against a small pull moves less than its slip', () => {
    const nudged = carriedTo(mesh, (x, y) => [x + 0.4, y], left);
    const result = solved({ ...sheetOf(mesh), held: nudged, friction: 1 });
    expect(largestDifference(result.points, mesh.points)).toBeLessThan(SLIP);
  });
});

test('ME16: moving a pin from the last state ends where a fresh start does', () => {
  const mesh = shaken(10, 8);
  const pins = carriedTo(mesh, (x, y) => [1.15 * x, 1.1 * y], onBorder);
  const solver = solverOf({ ...sheetOf(mesh), pins });
  solver.solve();
  for (let k = 0; k < 5; k++) {
    const other = pins.map((pin, i) =>
      i === 3 * k ? { ...pin, x: pin.x + 2, y: pin.y - 1 } : pin,
    );
    expect(solver.constrain({ held: [], pins: other, slides: [] }).ok).toBe(true);
    const warm = solver.solve();
    const cold = solved({ ...sheetOf(mesh), pins: other });
    expect(warm.iterations).toBeLessThanOrEqual(6);
    // Both to a residual of 1e-10 of 5 N over at least 0.05 N/mm.
    expect(largestDifference(warm.points, cold.points)).toBeLessThan(1e-7);
  }
});

test('ME16: a caller can stop it, and it says so', () => {
  const mesh = shaken();
  const pins = carriedTo(mesh, (x, y) => [1.3 * x + (y * y) / 500, 1.1 * y], onBorder);
  const seen: number[] = [];
  const result = solverOf({ ...sheetOf(mesh), pins }).solve(({ iterations }) => {
    seen.push(iterations);
    return seen.length < 2;
  });
  expect(result.stopped).toBe(true);
  expect(result.converged).toBe(false);
  expect(seen).toEqual([1, 2]);
});
