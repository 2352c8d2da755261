import type { QuotientGraph } from './quotient-graph.ts';

/** Sum over the list of a variable: twins have the same one. */
const checksum = (graph: QuotientGraph, i: number): number => {
  const first = graph.start[i]!;
  let sum = 0;
  for (let p = first; p < first + graph.length[i]!; p++) sum += graph.list[p]!;
  return sum;
};

/** Whether variables `i` and `j`, both in the pivot's element, have the same list in any order. */
const areTwins = (graph: QuotientGraph, i: number, j: number): boolean => {
  if (graph.length[i] !== graph.length[j] || graph.elementCount[i] !== graph.elementCount[j])
    return false;
  const { list } = graph;
  const ofI = list.subarray(graph.start[i]!, graph.start[i]! + graph.length[i]!);
  const first = graph.start[j]!;
  for (let p = first; p < first + graph.length[j]!; p++) if (!ofI.includes(list[p]!)) return false;
  return true;
};

/** `j` goes with `i` from now on. Weights of variables in the pivot's element are negative. */
const merge = (graph: QuotientGraph, i: number, j: number): void => {
  graph.weight[i]! += graph.weight[j]!;
  graph.weight[j] = 0;
  graph.join(j, i);
};

/** Merges the twins among `same`, which all have one checksum. */
const mergeWithin = (graph: QuotientGraph, same: readonly number[]): void => {
  for (const [at, i] of same.entries()) {
    if (graph.weight[i] === 0) continue;
    for (const j of same.slice(at + 1))
      if (graph.weight[j] !== 0 && areTwins(graph, i, j)) merge(graph, i, j);
  }
};

/** Merges variables of the element of `k` that are next to the same elements and variables. */
export const mergeTwins = (graph: QuotientGraph, k: number): void => {
  const bySum = new Map<number, number[]>();
  for (let p = graph.start[k]!; p < graph.start[k]! + graph.length[k]!; p++) {
    const i = graph.list[p]!;
    if (graph.weight[i] === 0) continue;
    const sum = checksum(graph, i);
    const same = bySum.get(sum);
    if (same === undefined) bySum.set(sum, [i]);
    else same.push(i);
  }
  for (const same of bySum.values()) if (same.length > 1) mergeWithin(graph, same);
};
