import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { jitteredGrid } from './check/plane-stress-grid.ts';
import { dense } from './check/random-symmetric.ts';
import { type Block, elementMap, packedLength, scatterAdd } from './element-map.ts';
import { checkPattern } from './pattern.ts';
import { patternFromTriangles } from './triangle-pattern.ts';

/** Triangles of three different nodes among `nodes`, in any order, some sharing edges. */
const someTriangles = fc
  .integer({ min: 3, max: 12 })
  .chain((nodes) =>
    fc
      .array(
        fc.uniqueArray(fc.integer({ min: 0, max: nodes - 1 }), { minLength: 3, maxLength: 3 }),
        { maxLength: 15 },
      )
      .map((list) => ({ nodes, triangles: Uint32Array.from(list.flat()) })),
  );

/** Adds packed element matrices one entry at a time into a full matrix. */
const assembleDense = (
  nodes: number,
  elements: Uint32Array,
  corners: number,
  block: Block,
  entries: Float64Array,
): Matrix => {
  const full = Matrix.zeros(nodes * block, nodes * block);
  let at = 0;
  for (let first = 0; first < elements.length; first += corners)
    for (let a = 0; a < corners * block; a++)
      for (let b = a; b < corners * block; b++) {
        const i = block * elements[first + Math.floor(a / block)]! + (a % block);
        const j = block * elements[first + Math.floor(b / block)]! + (b % block);
        full.set(i, j, full.get(i, j) + entries[at]!);
        if (i !== j) full.set(j, i, full.get(j, i) + entries[at]!);
        at += 1;
      }
  return full;
};

describe.each([1, 2] as const)('triangles of %i unknowns a node', (block) => {
  it('SP2: scatter-add through the map is assembly', () => {
    fc.assert(
      fc.property(someTriangles, ({ nodes, triangles }) => {
        const { pattern, map } = patternFromTriangles(triangles, nodes, block);
        checkPattern(pattern);
        expect(map.length).toBe((triangles.length / 3) * packedLength(3, block));
        // Whole numbers: sums are exact in any order.
        const entries = Float64Array.from(map, (_, k) => ((k * 7919) % 101) - 50);
        const values = new Float64Array(pattern.rowIdx.length);
        scatterAdd(values, map, entries);
        const expected = assembleDense(nodes, triangles, 3, block, entries);
        expect(dense({ pattern, values }).to2DArray()).toEqual(expected.to2DArray());
      }),
    );
  });

  it('SP2: edges and single nodes of the mesh find their entries in its pattern', () => {
    const { triangles } = jitteredGrid(4, 3, 5);
    const { pattern } = patternFromTriangles(triangles, 12, block);
    for (const [elements, corners] of [
      [Uint32Array.of(1, 0, 4, 5), 2],
      [Uint32Array.of(7, 11), 1],
    ] as const) {
      const map = elementMap(pattern, elements, corners, block);
      const entries = Float64Array.from(map, (_, k) => k + 1);
      const values = new Float64Array(pattern.rowIdx.length);
      scatterAdd(values, map, entries);
      const expected = assembleDense(12, elements, corners, block, entries);
      expect(dense({ pattern, values }).to2DArray()).toEqual(expected.to2DArray());
    }
  });
});

describe('triangle pattern', () => {
  it('SP2: two triangles that share an edge: five edges, four nodes', () => {
    const { pattern } = patternFromTriangles(Uint32Array.of(0, 1, 2, 2, 1, 3), 4, 1);
    expect([...pattern.colPtr]).toEqual([0, 1, 3, 6, 9]);
    expect([...pattern.rowIdx]).toEqual([0, 0, 1, 0, 1, 2, 1, 2, 3]);
  });

  it('SP2: a node in no triangle keeps its diagonal', () => {
    const { pattern } = patternFromTriangles(Uint32Array.of(0, 1, 3), 5, 1);
    expect([...pattern.rowIdx.subarray(pattern.colPtr[2]!, pattern.colPtr[3]!)]).toEqual([2]);
    expect(pattern.n).toBe(5);
  });

  it('SP2: an index beyond the nodes, a node twice, an edge that is not there are refused', () => {
    expect(() => patternFromTriangles(Uint32Array.of(0, 1, 3), 3, 2)).toThrow('node 3 of 3');
    expect(() => patternFromTriangles(Uint32Array.of(0, 1, 1), 3, 2)).toThrow('node 1 twice');
    const { pattern } = patternFromTriangles(Uint32Array.of(0, 1, 2, 2, 1, 3), 4, 1);
    expect(() => elementMap(pattern, Uint32Array.of(0, 3), 2, 1)).toThrow('no entry (0, 3)');
    expect(() => elementMap(pattern, Uint32Array.of(0, 9), 2, 1)).toThrow('no entry (0, 9)');
  });
});
