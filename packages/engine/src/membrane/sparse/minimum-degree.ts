import { DegreeLists } from './degree-lists.ts';
import { mergeTwins } from './merge-twins.ts';
import type { Graph } from './node-graph.ts';
import { QuotientGraph } from './quotient-graph.ts';

/** What one run carries from pivot to pivot. */
interface Run {
  readonly graph: QuotientGraph;
  readonly lists: DegreeLists;
  /** Upper bound on the nodes next to each variable, itself left out. */
  readonly degree: Int32Array;
  /** Per element, `stamp` + nodes outside the pivot's element; below `stamp` where not looked at. */
  readonly outside: Float64Array;
  stamp: number;
  eliminated: number;
}

/** Moves a live variable into the element being formed; its weight turns negative as the mark. */
const gather = ({ graph, lists }: Run, variable: number): number => {
  const weight = graph.weight[variable]!;
  if (weight <= 0) return 0;
  graph.weight[variable] = -weight;
  graph.push(variable);
  lists.take(variable);
  return weight;
};

/** The element that eliminating `k` leaves: its variables and those of its elements, which it swallows. */
const formElement = (run: Run, k: number): void => {
  const { graph } = run;
  const first = graph.start[k]!;
  const firstVariable = first + graph.elementCount[k]!;
  const end = first + graph.length[k]!;
  const start = graph.openElement();
  graph.weight[k] = -graph.weight[k]!;
  let size = 0;
  for (let p = first; p < firstVariable; p++) {
    const element = graph.list[p]!;
    const from = graph.start[element]!;
    for (let q = from; q < from + graph.length[element]!; q++) size += gather(run, graph.list[q]!);
    graph.live[element] = 0;
  }
  for (let p = firstVariable; p < end; p++) size += gather(run, graph.list[p]!);
  graph.closeElement(k, start, size);
};

/** For each element next to the pivot's, how much of it lies outside: counted down from its size. */
const measureOverlap = (run: Run, k: number): void => {
  const { graph, outside, stamp } = run;
  const { list, start, elementCount, live, elementSize } = graph;
  for (let p = start[k]!; p < start[k]! + graph.length[k]!; p++) {
    const i = list[p]!;
    for (let q = start[i]!; q < start[i]! + elementCount[i]!; q++) {
      const e = list[q]!;
      if (live[e] === 0) continue;
      if (outside[e]! < stamp) outside[e] = stamp + elementSize[e]!;
      outside[e]! += graph.weight[i]!;
    }
  }
};

/** Elements of `i` that reach outside the pivot's are kept; one inside it is swallowed too. */
const keepElements = ({ graph, outside, stamp }: Run, i: number): number => {
  const { list, live } = graph;
  const first = graph.start[i]!;
  const end = first + graph.elementCount[i]!;
  let kept = first;
  let reach = 0;
  for (let p = first; p < end; p++) {
    const e = list[p]!;
    if (live[e] === 0) continue;
    const beyond = outside[e]! - stamp;
    if (beyond > 0) {
      reach += beyond;
      list[kept++] = e;
    } else live[e] = 0;
  }
  graph.elementCount[i] = kept - first;
  return reach;
};

/** Variables next to `i` that are live and outside the pivot's element stay, after the elements. */
const keepVariables = ({ graph }: Run, i: number, from: number): number => {
  const { list, weight } = graph;
  const first = graph.start[i]!;
  const end = first + graph.length[i]!;
  let kept = first + graph.elementCount[i]!;
  let reach = 0;
  for (let p = from; p < end; p++) {
    const j = list[p]!;
    if (weight[j]! <= 0) continue;
    reach += weight[j]!;
    list[kept++] = j;
  }
  graph.length[i] = kept - first;
  return reach;
};

/** Puts element `k` last among the elements of `i`. There is room: what led to `k` has just gone. */
const addElement = (graph: QuotientGraph, i: number, k: number): void => {
  const at = graph.start[i]! + graph.elementCount[i]!;
  graph.list[graph.start[i]! + graph.length[i]!] = graph.list[at]!;
  graph.list[at] = k;
  graph.elementCount[i]! += 1;
  graph.length[i]! += 1;
};

/** A variable with nothing outside the pivot's element can be eliminated with the pivot at no cost. */
const eliminateAlong = ({ graph }: Run, i: number, k: number): void => {
  const weight = -graph.weight[i]!;
  graph.elementSize[k]! -= weight;
  graph.weight[k]! -= weight;
  graph.weight[i] = 0;
  graph.join(i, k);
};

/** Renews the lists of the variables in the pivot's element and bounds their outer degree. */
const renewVariables = (run: Run, k: number): void => {
  const { graph, degree } = run;
  for (let p = graph.start[k]!; p < graph.start[k]! + graph.length[k]!; p++) {
    const i = graph.list[p]!;
    const firstVariable = graph.start[i]! + graph.elementCount[i]!;
    const reach = keepElements(run, i) + keepVariables(run, i, firstVariable);
    if (reach === 0) eliminateAlong(run, i, k);
    else {
      addElement(graph, i, k);
      degree[i] = Math.min(degree[i]!, reach);
    }
  }
};

/** Gives the variables in the pivot's element their weight and new degree, and lists them again. */
const relist = (run: Run, k: number): void => {
  const { graph, degree, lists } = run;
  const left = graph.count - run.eliminated;
  for (let p = graph.start[k]!; p < graph.start[k]! + graph.length[k]!; p++) {
    const i = graph.list[p]!;
    const weight = -graph.weight[i]!;
    if (weight <= 0) continue;
    graph.weight[i] = weight;
    degree[i] = Math.min(degree[i]! + graph.elementSize[k]! - weight, left - weight);
    lists.put(i, degree[i]!);
  }
};

const eliminate = (run: Run, k: number): void => {
  const { graph } = run;
  formElement(run, k);
  measureOverlap(run, k);
  renewVariables(run, k);
  mergeTwins(graph, k);
  run.eliminated -= graph.weight[k]!;
  graph.weight[k] = 0;
  relist(run, k);
  graph.shrinkElement(k);
  if (graph.length[k] === 0) graph.live[k] = 0;
  // Every stamped figure lies below stamp + count, so the next stamp is above them all.
  run.stamp += graph.count + 1;
};

const newRun = (graph: Graph): Run => {
  const degree = new Int32Array(graph.count).map((_, i) => graph.start[i + 1]! - graph.start[i]!);
  const lists = new DegreeLists(graph.count);
  for (let i = 0; i < graph.count; i++) lists.put(i, degree[i]!);
  return {
    graph: new QuotientGraph(graph),
    lists,
    degree,
    outside: new Float64Array(graph.count),
    stamp: 1,
    eliminated: 0,
  };
};

/**
 * An order of elimination that keeps the factor sparse: approximate minimum degree on a quotient
 * graph, with element absorption, elimination in mass and merging of nodes that cannot be told apart
 * (Amestoy, Davis and Duff 1996, SIAM J. Matrix Anal. Appl. 17, 886). Returns `order`, where
 * `order[k]` is the node eliminated k-th. Deterministic. One node next to thousands makes it slow
 * (quadratic in its degree): meshes have none.
 */
export const minimumDegreeOrder = (graph: Graph): Int32Array => {
  const run = newRun(graph);
  const order = new Int32Array(graph.count);
  let at = 0;
  while (run.eliminated < graph.count) {
    const k = run.lists.takeLeast();
    eliminate(run, k);
    run.graph.eachMember(k, (node) => {
      order[at++] = node;
    });
  }
  return order;
};
