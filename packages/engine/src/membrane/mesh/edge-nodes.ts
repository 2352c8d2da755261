import type { Mesh } from './mesh.ts';

/**
 * Nodes along the edges of one tag, as chains in the direction of the edges. A closed chain repeats
 * its first node at the end; no edge of the tag gives no chain. Edges of a mesh come in order along
 * the outline, which is what joins them.
 */
export const edgeChains = ({ edges, edgeTags }: Mesh, tag: number): readonly Uint32Array[] => {
  const chains: number[][] = [];
  for (let k = 0; k < edgeTags.length; k++) {
    if (edgeTags[k] !== tag) continue;
    const [a, b] = [edges[2 * k]!, edges[2 * k + 1]!];
    const open = chains.at(-1);
    if (open?.at(-1) === a) open.push(b);
    else chains.push([a, b]);
  }
  joinAround(chains);
  return chains.map((chain) => Uint32Array.from(chain));
};

/** A ring that was cut at its first point has its last chain run into an earlier one. */
const joinAround = (chains: number[][]): void => {
  for (let k = chains.length - 1; k > 0; k--) {
    const end = chains[k]!.at(-1);
    const first = chains.findIndex((chain, i) => i < k && chain[0] === end);
    if (first < 0) continue;
    chains[first] = [...chains[k]!, ...chains[first]!.slice(1)];
    chains.splice(k, 1);
  }
};

/** Nodes on the edges of one tag, each once, in the order of its chains. */
export const nodesOnEdges = (mesh: Mesh, tag: number): Uint32Array =>
  Uint32Array.from(new Set(edgeChains(mesh, tag).flatMap((chain) => [...chain])));
