import { describe, expect, it } from 'vitest';
import { boundaryLoops } from './boundary-loops.ts';
import { pointOf } from './check/mesh-facts.ts';
import { circle, openLine, question, ring, SQUARE } from './check/pieces.ts';
import { doubleArea } from './segments.ts';
import { triangulate } from './triangulate.ts';

describe('boundary loops', () => {
  it('M15: the outline runs counter-clockwise, holes clockwise, and lines are no boundary', () => {
    const holes = [ring(circle(30, 30, 10, 12), 100), ring(circle(70, 60, 15, 12), 200)];
    const lines = [
      openLine(
        [
          [0, 90],
          [100, 90],
        ],
        300,
      ),
    ];
    const result = triangulate(question(SQUARE, { holes, lines }));
    if (!result.ok) throw new Error('no mesh');
    const { mesh } = result.value;
    const areas = boundaryLoops(mesh).map(
      (loop) => doubleArea([...loop].map((n) => pointOf(mesh, n))) / 2,
    );
    // The area of a regular 12-gon is 3 r². Nodes on edges are off them by rounding.
    [10_000, -300, -675].forEach((area, i) => {
      expect(areas[i]).toBeCloseTo(area, 9);
    });
    expect(areas).toHaveLength(3);
    expect(boundaryLoops(mesh)[0]![0]).toBe(0);
  });

  it('M15: no triangles have no loop, and two that share one node are refused', () => {
    const empty = { edges: new Uint32Array(), edgeTags: new Int32Array() };
    const points = new Float64Array(10);
    expect(boundaryLoops({ ...empty, points, triangles: new Uint32Array() })).toEqual([]);
    const bow = { ...empty, points, triangles: Uint32Array.from([0, 1, 2, 2, 3, 4]) };
    expect(() => boundaryLoops(bow)).toThrow('two boundaries meet at node 2');
  });
});
