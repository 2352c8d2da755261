import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { onPiece, snapOf } from './check-question.ts';
import { outsideFault } from './faults.ts';
import type { MeshQuestion, OutlineRing, Xy } from './mesh.ts';
import { between, distanceOf, doubleArea, nearestShare } from './segments.ts';

/** An edge as given: corners, tag, and the nodes that lie on it from `a` to `b`, both included. */
export interface GivenEdge {
  readonly a: number;
  readonly b: number;
  readonly tag: number;
  /** The piece lies left of it only. */
  readonly boundary: boolean;
  readonly field: string;
  nodes: number[];
}

export interface Arrangement {
  readonly points: Xy[];
  readonly edges: GivenEdge[];
  /** Node of each asked point. */
  readonly nodeOf: Uint32Array;
}

/** The ring in the wanted direction, tags kept with their edges. */
export const turned = (ring: OutlineRing, counterClockwise: boolean): OutlineRing => {
  if (doubleArea(ring.points) > 0 === counterClockwise) return ring;
  const last = ring.points.length - 1;
  const tags = ring.tags.map((_, i) => ring.tags[(2 * last - i) % (last + 1)]!);
  return { points: [...ring.points].reverse(), tags };
};

/**
 * One list of points and edges in which everything that meets does so at a node. Points of lines and
 * asked nodes within the snap distance of a corner become that corner, of an edge are moved onto it.
 */
export const arrange = (q: MeshQuestion): Result<Arrangement> => {
  const plan = new Plan(snapOf(q));
  plan.addRing(turned(q.outer, true));
  for (const hole of q.holes) plan.addRing(turned(hole, false));
  const faults: Fault[] = [];
  const put = (p: Xy, field: string, what: string): number => {
    const node = plan.nodeOnOutline(p);
    if (node >= 0) return node;
    if (!onPiece(q, p)) faults.push(outsideFault(field, what, p));
    return plan.add(p);
  };
  q.lines.forEach((line, i) => {
    plan.addLine(
      line.points.map((p, k) => put(p, `lines[${i}].points[${k}]`, 'point')),
      line.tags,
      `lines[${i}]`,
    );
  });
  const nodeOf = Uint32Array.from(q.nodes, (p, i) => put(p, `nodes[${i}]`, 'node'));
  plan.finish();
  if (faults.length === 0) faults.push(...plan.linesOutside(q));
  return faults.length > 0
    ? fail(...faults)
    : ok({ points: plan.points, edges: plan.edges, nodeOf });
};

class Plan {
  readonly points: Xy[] = [];
  readonly edges: GivenEdge[] = [];
  private readonly snap: number;

  constructor(snap: number) {
    this.snap = snap;
  }

  add(p: Xy): number {
    return this.points.push(p) - 1;
  }

  addRing(ring: OutlineRing): void {
    const first = this.points.length;
    const count = ring.points.length;
    this.points.push(...ring.points);
    for (let i = 0; i < count; i++)
      this.addEdge(first + i, first + ((i + 1) % count), ring.tags[i]!, true, '');
  }

  addLine(nodes: readonly number[], tags: readonly number[], field: string): void {
    for (let i = 0; i + 1 < nodes.length; i++)
      if (nodes[i] !== nodes[i + 1]) this.addEdge(nodes[i]!, nodes[i + 1]!, tags[i]!, false, field);
  }

  private addEdge(a: number, b: number, tag: number, boundary: boolean, field: string): void {
    this.edges.push({ a, b, tag, boundary, field, nodes: [a, b] });
  }

  /** The corner within reach, or else a new node on the nearest edge within reach, or else −1. */
  nodeOnOutline(p: Xy): number {
    const corner = nearest(this.points, this.snap, (c) => distanceOf(p, c));
    if (corner >= 0) return corner;
    const edge = nearest(this.edges, this.snap, (e) => distanceOf(p, this.foot(e, p)));
    if (edge < 0) return -1;
    const node = this.add(this.foot(this.edges[edge]!, p));
    this.edges[edge]!.nodes.push(node);
    return node;
  }

  private foot(e: GivenEdge, p: Xy): Xy {
    const [a, b] = [this.points[e.a]!, this.points[e.b]!];
    return between(a, b, nearestShare(p, a, b));
  }

  /** Lines take in the nodes that they pass through; nodes of every edge are put in order. */
  finish(): void {
    for (const e of this.edges) {
      if (!e.boundary) for (const [node, p] of this.points.entries()) this.takeIn(e, p, node);
      const a = this.points[e.a]!;
      e.nodes.sort((m, n) => distanceOf(a, this.points[m]!) - distanceOf(a, this.points[n]!));
    }
    this.dropDoubles();
  }

  private takeIn(e: GivenEdge, p: Xy, node: number): void {
    if (e.nodes.includes(node)) return;
    if (distanceOf(p, this.foot(e, p)) <= this.snap) e.nodes.push(node);
  }

  /** Where a line runs along an edge or another line, the first given keeps the stretch. */
  private dropDoubles(): void {
    const taken = new Set<string>();
    const parts = this.edges.splice(0).flatMap((e) => {
      const runs: number[][] = [];
      for (let i = 0; i + 1 < e.nodes.length; i++) {
        const [a, b] = [e.nodes[i]!, e.nodes[i + 1]!];
        const key = a < b ? `${a} ${b}` : `${b} ${a}`;
        if (taken.has(key)) continue;
        taken.add(key);
        const run = runs.at(-1);
        if (run?.at(-1) === a) run.push(b);
        else runs.push([a, b]);
      }
      return runs.map((nodes) => ({ ...e, a: nodes[0]!, b: nodes.at(-1)!, nodes }));
    });
    this.edges.push(...parts);
  }

  /** Stretches of lines that leave the piece between two of its nodes. */
  linesOutside(q: MeshQuestion): Fault[] {
    return this.edges.flatMap((e) => {
      if (e.boundary) return [];
      const middles = e.nodes
        .slice(1)
        .map((n, i) => between(this.points[e.nodes[i]!]!, this.points[n]!, 0.5));
      const out = middles.find((m) => !onPiece(q, m));
      return out ? [outsideFault(e.field, 'line', out)] : [];
    });
  }
}

/** Index of the nearest of `all` within `reach`, −1 when none is. */
const nearest = <T>(all: readonly T[], reach: number, distance: (one: T) => number): number => {
  let [index, least] = [-1, reach];
  for (let i = 0; i < all.length; i++) {
    const d = distance(all[i]!);
    if (d < least || (d === least && index < 0)) [index, least] = [i, d];
  }
  return index;
};
