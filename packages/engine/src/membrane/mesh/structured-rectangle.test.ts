import { describe, expect, it } from 'vitest';
import { boundaryLoops } from './boundary-loops.ts';
import { edgeKey, edgeUses } from './check/mesh-facts.ts';
import { nodesOnEdges } from './edge-nodes.ts';
import { meshQuality } from './mesh-quality.ts';
import { RECTANGLE_TAGS, structuredRectangle } from './structured-rectangle.ts';

describe('structured rectangles', () => {
  it('M14: cells, nodes, area and Euler number, with both kinds of diagonals', () => {
    for (const diagonals of ['same', 'alternate'] as const) {
      const mesh = structuredRectangle(70, 30, 7, 3, diagonals);
      const quality = meshQuality(mesh);
      expect(quality).toMatchObject({ nodes: 32, triangles: 42 });
      // Halves of squares of 10 mm, exact in binary.
      expect([quality.area, quality.smallestArea]).toEqual([2100, 50]);
      expect(mesh.points.length / 2 - edgeUses(mesh).size + 42).toBe(1);
    }
  });

  it('M14: alternate diagonals meet in fours, the same diagonals do not', () => {
    const triangles = (diagonals: 'same' | 'alternate') =>
      [...structuredRectangle(2, 2, 2, 2, diagonals).triangles].filter((n) => n === 4).length;
    expect(triangles('same')).toBe(6);
    expect(triangles('alternate')).toBe(8);
  });

  it('M14: the border runs around once, tagged by its side', () => {
    const mesh = structuredRectangle(20, 30, 2, 3);
    const uses = edgeUses(mesh);
    for (let k = 0; k < mesh.edgeTags.length; k++)
      expect(uses.get(edgeKey(mesh.points, mesh.edges[2 * k]!, mesh.edges[2 * k + 1]!))).toBe(1);
    expect([...nodesOnEdges(mesh, RECTANGLE_TAGS.bottom)]).toEqual([0, 1, 2]);
    expect([...nodesOnEdges(mesh, RECTANGLE_TAGS.right)]).toEqual([2, 5, 8, 11]);
    expect([...nodesOnEdges(mesh, RECTANGLE_TAGS.top)]).toEqual([11, 10, 9]);
    expect([...nodesOnEdges(mesh, RECTANGLE_TAGS.left)]).toEqual([9, 6, 3, 0]);
    expect(boundaryLoops(mesh).map((l) => [...l])).toEqual([[0, 1, 2, 5, 8, 11, 10, 9, 6, 3]]);
  });

  it('M14: what is no rectangle throws', () => {
    for (const [w, h, nx, ny] of [
      [0, 1, 1, 1],
      [1, -1, 1, 1],
      [1, 1, 0, 1],
      [1, 1, 1, 1.5],
    ] as const)
      expect(() => structuredRectangle(w, h, nx, ny)).toThrow('no rectangle');
  });
});
