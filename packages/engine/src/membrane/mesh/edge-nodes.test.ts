import { describe, expect, it } from 'vitest';
import { pointOf } from './check/mesh-facts.ts';
import { openLine, question, SQUARE } from './check/pieces.ts';
import { edgeChains, nodesOnEdges } from './edge-nodes.ts';
import type { MeshQuestion } from './mesh.ts';
import { triangulate } from './triangulate.ts';

const meshed = (q: MeshQuestion) => {
  const result = triangulate(q);
  if (!result.ok) throw new Error('no mesh');
  return result.value.mesh;
};

const tagged = (tags: readonly number[]): MeshQuestion => ({
  ...question(SQUARE, { size: 20 }),
  outer: { points: SQUARE, tags },
});

describe('nodes on edges', () => {
  it('M16: one chain along an edge, in its direction', () => {
    const mesh = meshed(tagged([0, 1, 2, 3]));
    const [chain, ...rest] = edgeChains(mesh, 1);
    expect(rest).toEqual([]);
    const places = [...chain!].map((n) => pointOf(mesh, n));
    expect(places.every(([x]) => x === 100)).toBe(true);
    expect(places.map(([, y]) => y)).toEqual([...places.map(([, y]) => y)].sort((a, b) => a - b));
    expect(places[0]).toEqual([100, 0]);
    expect(places.at(-1)).toEqual([100, 100]);
  });

  it('M16: a tag on opposite edges has two chains, over the first point one, all around one', () => {
    expect(edgeChains(meshed(tagged([0, 1, 0, 1])), 0)).toHaveLength(2);
    const mesh = meshed(tagged([5, 1, 1, 5]));
    const [over, ...rest] = edgeChains(mesh, 5);
    expect(rest).toEqual([]);
    expect(pointOf(mesh, over![0]!)).toEqual([0, 100]);
    expect(pointOf(mesh, over!.at(-1)!)).toEqual([100, 0]);
    const around = edgeChains(meshed(tagged([5, 5, 5, 5])), 5);
    expect(around).toHaveLength(1);
    expect(around[0]![0]).toBe(around[0]!.at(-1));
  });

  it('M16: every node once, and none for a tag that no edge has', () => {
    const mesh = meshed(tagged([5, 5, 5, 5]));
    const nodes = nodesOnEdges(mesh, 5);
    expect(new Set(nodes).size).toBe(nodes.length);
    expect(nodes.length).toBe(mesh.edgeTags.length);
    expect(nodesOnEdges(mesh, 6)).toHaveLength(0);
  });

  it('M16: a line that runs along an edge leaves that stretch to the edge', () => {
    const line = openLine(
      [
        [0, 0],
        [50, 0],
        [50, 50],
      ],
      9,
    );
    const mesh = meshed({ ...tagged([0, 1, 2, 3]), lines: [{ ...line, tags: [9, 9] }] });
    expect(edgeChains(mesh, 0)).toHaveLength(1);
    expect(nodesOnEdges(mesh, 0)).toContain(nodesOnEdges(mesh, 9)[0]);
    const ends = edgeChains(mesh, 9).map((c) => [pointOf(mesh, c[0]!), pointOf(mesh, c.at(-1)!)]);
    expect(ends).toEqual([
      [
        [50, 0],
        [50, 50],
      ],
    ]);
  });
});
