import type { Mesh } from './mesh.ts';

/**
 * Closed loops of node indices around the mesh, the piece on their left: outlines counter-clockwise,
 * holes clockwise, in order of the smallest node of each, from which they start. Taken from the
 * triangles alone. A mesh whose loops share a node throws: no loop would be the right one.
 */
export const boundaryLoops = (mesh: Mesh): readonly Uint32Array[] => {
  const after = boundarySteps(mesh);
  const loops: Uint32Array[] = [];
  for (const start of [...after.keys()].sort((a, b) => a - b)) {
    const loop: number[] = [];
    for (let node = start; after.has(node); ) {
      loop.push(node);
      const following = after.get(node)!;
      after.delete(node);
      node = following;
    }
    if (loop.length > 0) loops.push(Uint32Array.from(loop));
  }
  return loops;
};

/** Head of the boundary half-edge that leaves each boundary node. */
const boundarySteps = ({ points, triangles }: Mesh): Map<number, number> => {
  const stride = points.length / 2;
  const all = new Set<number>();
  forEachHalfEdge(triangles, (a, b) => all.add(a * stride + b));
  const after = new Map<number, number>();
  forEachHalfEdge(triangles, (a, b) => {
    if (all.has(b * stride + a)) return;
    if (after.has(a)) throw new RangeError(`two boundaries meet at node ${a}`);
    after.set(a, b);
  });
  return after;
};

const forEachHalfEdge = (triangles: Uint32Array, visit: (a: number, b: number) => void): void => {
  for (let e = 0; e < triangles.length; e++)
    visit(triangles[e]!, triangles[e % 3 === 2 ? e - 2 : e + 1]!);
};
