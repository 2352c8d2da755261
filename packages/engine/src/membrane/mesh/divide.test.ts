import { describe, expect, it } from 'vitest';
import { arrange } from './arrange.ts';
import { question, SQUARE } from './check/pieces.ts';
import { divide } from './divide.ts';
import type { SizeField } from './mesh.ts';

const bottom = (size: SizeField, maxPoints = 1000): number[] => {
  const arranged = arrange(question(SQUARE));
  if (!arranged.ok) throw new Error('not arranged');
  const { points, segments } = divide(arranged.value, size, maxPoints);
  const starts = segments.filter((_, i) => i % 3 === 0 && segments[i + 2] === 0);
  return starts.map((n) => points[n]![0]);
};

describe('division of edges', () => {
  it('M22: equal parts for one size, up to a quarter longer than it', () => {
    expect(bottom(() => 25)).toEqual([0, 25, 50, 75]);
    expect(bottom(() => 81)).toEqual([0]);
    expect(bottom(() => 79)).toEqual([0, 50]);
    expect(bottom(() => Number.POSITIVE_INFINITY)).toEqual([0]);
  });

  it('M22: parts follow a size that grows, by its closed form', () => {
    // ∫ dx / (2 + x/10) is 10 ln((20 + x) / 20): 17.9 parts, to 18.
    const places = bottom((x) => 2 + x / 10);
    expect(places).toHaveLength(18);
    places.forEach((x, k) => {
      const exact = 20 * ((120 / 20) ** (k / 18) - 1);
      // The trapezium rule at half the smallest size: steps h = 1 mm, h² / 12 · slope, near 0.01.
      expect(Math.abs(x - exact)).toBeLessThan(0.02);
    });
  });

  it('M22: a piece that would pass the limit of nodes stays whole and says so', () => {
    const arranged = arrange(question(SQUARE));
    if (!arranged.ok) throw new Error('not arranged');
    const divided = divide(arranged.value, () => 1e-6, 1000);
    expect(divided.complete).toBe(false);
    expect(divided.points).toHaveLength(4);
    expect(divide(arranged.value, () => 10, 1000).complete).toBe(true);
  });
});
