import { describe, expect, test } from 'vitest';
import { KNIT } from './check/materials.ts';
import {
  carriedTo,
  largestDifference,
  onBorder,
  shaken,
  sheetOf,
  solverOf,
} from './check/sheets.ts';
import type { Equilibrium, MembraneQuestion, Pin } from './question.ts';
import { MOST_USE } from './question.ts';
import { GIVE } from './tethers.ts';

const mesh = shaken();
const bearing = (pins: readonly Pin[], most: number): Pin[] =>
  pins.map((pin) => ({ ...pin, most }));
const stretched = (by: number): Pin[] => carriedTo(mesh, (x, y) => [by * x, by * y], onBorder);

const pulls = ({ reactions }: Equilibrium): number[] =>
  Array.from({ length: reactions.length / 2 }, (_, k) =>
    Math.hypot(reactions[2 * k]!, reactions[2 * k + 1]!),
  );

describe('ME23: a pin that can bear so much', () => {
  test('bears no more, is short of its place by what is told, and the sheet is balanced', () => {
    const pins = bearing(stretched(1.5), 0.5);
    const result = solverOf({ ...sheetOf(mesh), pins }).solve();
    expect(result.converged).toBe(true);
    // The force is most · way / |way|: a rounding.
    expect(Math.max(...pulls(result))).toBeLessThanOrEqual(0.5 * (1 + 1e-12));
    const [x, y] = [0, 1].map((axis) =>
      result.reactions.reduce((sum, f, k) => sum + (k % 2 === axis ? f : 0), 0),
    );
    // Residuals of 42 nodes, each 1e-10 of the 5 N that strain a triangle by 1.
    expect(Math.abs(x!) + Math.abs(y!)).toBeLessThan(1e-7);
    const gave = result.gaveWay.filter(({ by }) => by.kind === 'pull');
    expect(gave.length).toBeGreaterThan(0);
    for (const { index, node, short } of gave) {
      const { x: px, y: py } = pins[index]!;
      const left = Math.hypot(px - result.points[2 * node]!, py - result.points[2 * node + 1]!);
      expect(left).toBeCloseTo(short, 9);
      // Beyond the way on which it comes to bear all it can, it bears that.
      if (short > GIVE) expect(pulls(result)[index]!).toBeCloseTo(0.5, 12);
    }
  });

  test('that bears all it has to is where it was put, as without a limit', () => {
    const free = solverOf({ ...sheetOf(mesh), pins: stretched(1.1) }).solve();
    const most = 1.01 * Math.max(...pulls(free));
    const bound = solverOf({ ...sheetOf(mesh), pins: bearing(stretched(1.1), most) }).solve();
    expect(bound.gaveWay).toEqual([]);
    expect(largestDifference(bound.points, free.points)).toBe(0);
  });

  test('that bears more lets the sheet go further', () => {
    const reach = [0.2, 0.5, 1, 2].map((most) => {
      const { gaveWay } = solverOf({
        ...sheetOf(mesh),
        pins: bearing(stretched(1.5), most),
      }).solve();
      return gaveWay.reduce((sum, { short }) => sum + short, 0);
    });
    for (let k = 1; k < reach.length; k++) expect(reach[k]!).toBeLessThan(reach[k - 1]!);
  });

  test('stands in the same place whatever the way there', () => {
    const pins = bearing(stretched(1.5), 0.5);
    const cold = solverOf({ ...sheetOf(mesh), pins }).solve();
    const solver = solverOf({ ...sheetOf(mesh), pins: bearing(stretched(2.5), 1) });
    solver.solve();
    expect(solver.constrain({ held: [], pins, slides: [] }).ok).toBe(true);
    const warm = solver.solve();
    expect(warm.converged).toBe(true);
    // A pin may be held at its place or within half of GIVE of it: both are told as there.
    expect(largestDifference(warm.points, cold.points)).toBeLessThan(GIVE);
  });

  test('on a wire bears across its line only, and slides along it', () => {
    const held = carriedTo(
      mesh,
      (x, y) => [x, y],
      (x) => x < 1e-9,
    );
    const slides = carriedTo(
      mesh,
      (x, y) => [x, y],
      (x) => x > 100 - 1e-9,
    ).map(({ node }) => ({
      node,
      ax: 150,
      ay: 0,
      bx: 156,
      by: 60,
      most: 0.3,
    }));
    const result = solverOf({ ...sheetOf(mesh), held, slides }).solve();
    expect(result.converged).toBe(true);
    slides.forEach(({ ax, ay, bx, by }, k) => {
      const at = 2 * (held.length + k);
      const [fx, fy] = [result.reactions[at]!, result.reactions[at + 1]!];
      expect(Math.hypot(fx, fy)).toBeLessThanOrEqual(0.3 * (1 + 1e-12));
      expect(Math.abs(fx * (bx - ax) + fy * (by - ay))).toBeLessThan(1e-8);
    });
    expect(result.gaveWay.some(({ kind, by }) => kind === 'slide' && by.kind === 'pull')).toBe(
      true,
    );
  });
});

describe('ME16: stopped in the midst of a step, the sheet is where that step began', () => {
  const far: MembraneQuestion = {
    ...sheetOf(mesh, KNIT),
    pins: carriedTo(mesh, (x, y) => [3 * x, 3 * y + (x * x) / 300], onBorder),
  };

  /** What it rests at on the way, and where it is when it is stopped after so many iterations. */
  const stoppedAfter = (count: number) => {
    const solver = solverOf(far);
    let rests = 0;
    const result = solver.solve((progress) => {
      if (progress.rests) rests += 1;
      return progress.iterations < count;
    });
    return { solver, result, rests };
  };

  test.each(Array.from({ length: 24 }, (_, k) => k + 1))('after %i iterations', (count) => {
    const { solver, result } = stoppedAfter(count);
    // Nothing is left of what a trial stretched beyond the limit.
    expect(Math.max(0, ...result.use)).toBeLessThanOrEqual(MOST_USE);
    // Told to stay where it lies, it does, wrinkles and all.
    const pins = far.pins.map(({ node }) => ({
      node,
      x: result.points[2 * node]!,
      y: result.points[2 * node + 1]!,
    }));
    expect(solver.constrain({ held: [], pins, slides: [] }).ok).toBe(true);
    const again = solver.solve();
    expect(again.converged).toBe(true);
    // A step on the way is settled to a millionth of the force that strains a triangle by 1.
    expect(largestDifference(again.points, result.points)).toBeLessThan(0.1);
  });

  test('it goes on to where it would have come to', () => {
    const whole = solverOf(far).solve();
    const { solver } = stoppedAfter(9);
    const result = solver.solve();
    expect(result.converged).toBe(whole.converged);
    // Which goals give way first hangs on the way; how far out it stretches does not.
    expect(Math.max(...result.use)).toBeLessThanOrEqual(MOST_USE);
    expect(result.energy / whole.energy).toBeCloseTo(1, 1);
  });
});
