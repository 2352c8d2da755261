import { describe, expect, test } from 'vitest';
import { KNIT } from './check/materials.ts';
import { carriedTo, onBorder, shaken, sheetOf, solved } from './check/sheets.ts';
import { stiffeningLaw } from './law.ts';
import { structuredRectangle } from './mesh/structured-rectangle.ts';
import { MOST_USE } from './question.ts';

describe('ME17: targets that the sheet does not reach', () => {
  test('far beyond the limit everywhere, it stops stretched out and names every constraint', () => {
    const mesh = shaken();
    const pins = carriedTo(mesh, (x, y) => [3 * x, 3 * y], onBorder);
    const result = solved({ ...sheetOf(mesh), pins });
    expect(result.converged).toBe(true);
    const most = Math.max(...result.use);
    expect(most).toBeLessThanOrEqual(MOST_USE);
    expect(most).toBeGreaterThan(0.9 * MOST_USE);
    // All but the one at the origin, which is there already.
    expect(result.gaveWay.length).toBe(pins.length - 1);
    for (const { kind, index, node, short } of result.gaveWay) {
      expect(kind).toBe('pin');
      const { x, y } = pins[index]!;
      expect(
        Math.hypot(x - result.points[2 * node]!, y - result.points[2 * node + 1]!),
      ).toBeCloseTo(short, 9);
    }
  });

  test('one pin too far gives way alone, the others arrive', () => {
    const mesh = structuredRectangle(100, 80, 10, 8, 'alternate');
    const held = carriedTo(
      mesh,
      (x, y) => [1.05 * x, 1.05 * y],
      (x) => x < 1e-9,
    );
    const pins = carriedTo(
      mesh,
      (x, y) => [1.05 * x, 1.05 * y],
      (x, y) => x > 99.9 && y % 40 < 1,
    );
    const far = pins.map((pin) => (pin.y > 40 && pin.y < 50 ? { ...pin, x: 260 } : pin));
    const result = solved({ ...sheetOf(mesh), held, pins: far });
    expect(result.gaveWay.map(({ index }) => index)).toEqual([1]);
    expect(result.gaveWay[0]!.by.kind).toBe('triangle');
    for (const index of [0, 2]) {
      const { node, x, y } = far[index]!;
      expect([result.points[2 * node], result.points[2 * node + 1]]).toEqual([x, y]);
    }
    expect(Math.max(...result.use)).toBeLessThanOrEqual(MOST_USE);
  });

  test('a cord at its limit is what gives way, and is named', () => {
    const mesh = structuredRectangle(100, 80, 5, 4, 'alternate');
    const edges = Array.from(mesh.edgeTags, (tag, edge) => ({ tag, edge }));
    const bound = stiffeningLaw({ slope: 20, stiffening: 1, limit: 0.05 });
    const cords = edges.filter(({ tag }) => tag === 0).map(({ edge }) => ({ edge, law: bound }));
    const pins = carriedTo(mesh, (x, y) => [1.2 * x, 1.05 * y], onBorder);
    const result = solved({ ...sheetOf(mesh), cords, pins });
    expect(result.gaveWay.length).toBeGreaterThan(0);
    expect(result.gaveWay.some(({ by }) => by.kind === 'cord')).toBe(true);
    // The bound edge is its lower one: no more than 5 % longer, while the upper one arrives.
    const [a, b] = [result.points[0]!, result.points[2 * 5]!];
    expect(b - a).toBeLessThan(105);
    const top = pins.filter(({ y }) => y > 80);
    expect(top.length - result.gaveWay.filter(({ node }) => node >= 24).length).toBeGreaterThan(3);
  });

  test('a lower share of the limit stops earlier', () => {
    const mesh = shaken();
    const pins = carriedTo(mesh, (x, y) => [1.5 * x, 1.35 * y], onBorder);
    const gentle = solved({ ...sheetOf(mesh, KNIT), pins, mostUse: 0.4 });
    expect(Math.max(...gentle.use)).toBeLessThanOrEqual(0.4);
    expect(gentle.gaveWay.length).toBeGreaterThan(0);
    expect(solved({ ...sheetOf(mesh, KNIT), pins, mostUse: 0.9 }).gaveWay).toEqual([]);
  });
});
