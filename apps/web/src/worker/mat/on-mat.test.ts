import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameOf, inPiece, nearestIndex, onMat, onSegment } from './on-mat.ts';

const number = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.record({ x: number, y: number });
const frame = fc.record({ turned: fc.boolean(), dx: number, dy: number });

test('MV4: from the piece to the mat and back is where it was', () => {
  fc.assert(
    fc.property(frame, point, (f, p) => {
      const back = inPiece(f, onMat(f, p));
      // Sums of numbers up to 1000 round by some 1e-13.
      expect(back.x).toBeCloseTo(p.x, 9);
      expect(back.y).toBeCloseTo(p.y, 9);
    }),
  );
});

test('MV4: how a piece was laid is found from where its places went', () => {
  const own = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 50 },
  ];
  fc.assert(
    fc.property(frame, (f) => {
      const found = frameOf(
        own,
        own.map((p) => onMat(f, p)),
      );
      expect(found.turned).toBe(f.turned);
      expect(found.dx).toBeCloseTo(f.dx, 9);
      expect(found.dy).toBeCloseTo(f.dy, 9);
    }),
  );
});

test('MV4: what lies under a comb, in order along it', () => {
  const places = [0, 30, 10, 20, 60].map((x) => ({ x, y: x === 20 ? 9 : 0 }));
  const comb = { lengthMm: 40, dx: 1, dy: 0 };
  expect(onSegment(places, { x: 15, y: 0 }, comb, 5)).toEqual([0, 2, 1]);
  expect(onSegment(places, { x: 15, y: 0 }, { ...comb, dx: -2 }, 5)).toEqual([1, 2, 0]);
  expect(nearestIndex(places, { x: 52, y: 3 })).toBe(4);
});
