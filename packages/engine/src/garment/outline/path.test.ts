import { describe, expect, it } from 'vitest';
import { boxOf, cubic, distance, flattenPath, line, pathLength, pathToSvg, point } from './path.ts';

const quarter = (4 / 3) * (Math.SQRT2 - 1);
const arc = cubic(
  point(100, 0),
  point(100, 100 * quarter),
  point(100 * quarter, 100),
  point(0, 100),
  'fold',
);
const square = [
  line(point(0, 0), point(10, 0), 'seam'),
  line(point(10, 0), point(10, 10), 'seam'),
  line(point(10, 10), point(0, 10), 'seam'),
  line(point(0, 10), point(0, 0), 'seam'),
];

describe('paths', () => {
  it('G-P1: flattening keeps corners, does not repeat the first, and gives none for no path', () => {
    expect(flattenPath(square)).toEqual([point(0, 0), point(10, 0), point(10, 10), point(0, 10)]);
    expect(flattenPath([])).toEqual([]);
  });

  it('G-P2: chords stay within the tolerance of the curve', () => {
    for (const tolerance of [5, 1, 0.1]) {
      const corners = flattenPath([arc], tolerance);
      const middles = corners.slice(1).map((p, i) => {
        const q = corners[i]!;
        return Math.hypot((p.x + q.x) / 2, (p.y + q.y) / 2);
      });
      // The cubic itself strays 0.027 % from the circle (a closed form of that handle length).
      for (const radius of middles) expect(Math.abs(radius - 100)).toBeLessThan(tolerance + 0.028);
    }
  });

  it('G-P3: the length of a quarter circle is π/2 radii', () => {
    // 0.02 %: the cubic strays at most 0.027 % outwards, half of that on average.
    expect(Math.abs(pathLength([arc]) / (50 * Math.PI) - 1)).toBeLessThan(2e-4);
  });

  it('G-P4: SVG data is closed for a closed path, open for an open one, moved and rounded', () => {
    expect(pathToSvg(square)).toBe('M0 0 L10 0 L10 10 L0 10 L0 0 Z');
    const moved = pathToSvg([arc], (p) => point(p.x / 3, p.y + 1));
    expect(moved).toBe('M33.33 1 C33.33 56.23 18.41 101 0 101');
    expect(pathToSvg([])).toBe('');
  });

  it('G-P5: boxes hold their points, and none is a box at the origin', () => {
    expect(boxOf([point(3, -1), point(-2, 5)])).toEqual({ left: -2, top: -1, right: 3, bottom: 5 });
    expect(boxOf([])).toEqual({ left: 0, top: 0, right: 0, bottom: 0 });
    expect(distance(point(0, 0), point(3, 4))).toBe(5);
  });
});
