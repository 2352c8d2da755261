import { expect, test } from 'vitest';
import { outwardAt } from './outward.ts';

const square = [
  { x: 0, y: 0 },
  { x: 5, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 5, y: 10 },
  { x: 0, y: 10 },
];

test('M2: out is away from the piece, whichever way the outline runs', () => {
  for (const outline of [square, [...square].reverse()]) {
    const up = outwardAt(outline, { x: 5, y: 1 });
    const down = outwardAt(outline, { x: 5, y: 11 });
    expect([up.x, up.y, down.x, down.y].map((v) => v + 0)).toEqual([0, -1, 0, 1]);
    const corner = outwardAt(outline, { x: 11, y: -1 });
    expect(corner.x).toBeCloseTo(-corner.y, 1);
    expect(corner.x).toBeGreaterThan(0);
  }
});
