import type { Graph } from './node-graph.ts';

/** Neighbours of each node that come before it in `order`, both as places in `order`; rising. */
export interface EarlierNeighbours {
  readonly start: Int32Array;
  readonly place: Int32Array;
}

export const placesOf = (order: Int32Array): Int32Array => {
  const place = new Int32Array(order.length);
  order.forEach((node, k) => {
    place[node] = k;
  });
  return place;
};

/** The rows of the reordered matrix left of its diagonal. */
export const earlierNeighbours = (graph: Graph, order: Int32Array): EarlierNeighbours => {
  const placeOf = placesOf(order);
  const start = new Int32Array(graph.count + 1);
  const place = new Int32Array(graph.neighbour.length / 2);
  let at = 0;
  order.forEach((node, k) => {
    const first = at;
    for (let p = graph.start[node]!; p < graph.start[node + 1]!; p++) {
      const i = placeOf[graph.neighbour[p]!]!;
      if (i < k) place[at++] = i;
    }
    place.subarray(first, at).sort();
    start[k + 1] = at;
  });
  return { start, place };
};

/**
 * Parent of each column in the elimination tree, -1 at a root: the first row below the diagonal in
 * that column of the factor (Liu 1990, SIAM J. Matrix Anal. Appl. 11, 134). Paths are shortened on
 * the way.
 */
export const eliminationTree = ({ start, place }: EarlierNeighbours): Int32Array => {
  const count = start.length - 1;
  const parent = new Int32Array(count).fill(-1);
  const ancestor = new Int32Array(count).fill(-1);
  for (let k = 0; k < count; k++)
    for (let p = start[k]!; p < start[k + 1]!; p++) {
      let i = place[p]!;
      while (i !== -1 && i < k) {
        const up = ancestor[i]!;
        ancestor[i] = k;
        if (up === -1) parent[i] = k;
        i = up;
      }
    }
  return parent;
};

/** Children of every node as linked lists, lowest first; roots hang under `count`. */
const childLists = (parent: Int32Array) => {
  const count = parent.length;
  const firstChild = new Int32Array(count + 1).fill(-1);
  const nextSibling = new Int32Array(count).fill(-1);
  for (let i = count - 1; i >= 0; i--) {
    const under = parent[i] === -1 ? count : parent[i]!;
    nextSibling[i] = firstChild[under]!;
    firstChild[under] = i;
  }
  return { firstChild, nextSibling };
};

/**
 * Columns so that each subtree is in one run, children before parents: the factor keeps its size,
 * and what is used together lies together.
 */
export const postorder = (parent: Int32Array): Int32Array => {
  const count = parent.length;
  const { firstChild, nextSibling } = childLists(parent);
  const order = new Int32Array(count);
  let at = 0;
  let node = firstChild[count]!;
  while (node !== -1) {
    while (firstChild[node]! !== -1) node = firstChild[node]!;
    for (;;) {
      order[at++] = node;
      if (nextSibling[node]! !== -1) {
        node = nextSibling[node]!;
        break;
      }
      node = parent[node]!;
      if (node === -1) return order;
    }
  }
  return order;
};
