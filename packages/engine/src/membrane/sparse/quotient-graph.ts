import type { Graph } from './node-graph.ts';

/**
 * What is left of a graph while its nodes are eliminated. A live variable stands for `weight` nodes
 * that cannot be told apart; an element is the clique that an eliminated pivot left behind. The list
 * of a variable holds `elementCount` elements, then variables; that of an element only variables.
 */
export class QuotientGraph {
  readonly count: number;
  list: Int32Array;
  readonly start: Int32Array;
  readonly elementCount: Int32Array;
  readonly length: Int32Array;
  /** Nodes a variable stands for; 0 once it is eliminated or merged; negative while in the pivot's element. */
  readonly weight: Int32Array;
  /** Nodes in the clique of an element. */
  readonly elementSize: Int32Array;
  /** 1 while an element is live. */
  readonly live: Uint8Array;
  private used: number;
  /** Chains of nodes that go with a variable, itself first. */
  private readonly nextMember: Int32Array;
  private readonly lastMember: Int32Array;

  constructor({ count, start, neighbour }: Graph) {
    this.count = count;
    this.used = neighbour.length;
    // Elements are appended: twice the edges is enough for most meshes, and it grows.
    this.list = new Int32Array(2 * neighbour.length + count + 16);
    this.list.set(neighbour);
    this.start = start.slice(0, count);
    this.elementCount = new Int32Array(count);
    this.length = new Int32Array(count).map((_, i) => start[i + 1]! - start[i]!);
    this.weight = new Int32Array(count).fill(1);
    this.elementSize = new Int32Array(count);
    this.live = new Uint8Array(count);
    this.nextMember = new Int32Array(count).fill(-1);
    this.lastMember = new Int32Array(count).map((_, i) => i);
  }

  /** Starts the list of the element that pivot `k` leaves: append with `push`, then `closeElement`. */
  openElement(): number {
    return this.used;
  }

  push(variable: number): void {
    if (this.used === this.list.length) {
      const wider = new Int32Array(2 * this.used);
      wider.set(this.list);
      this.list = wider;
    }
    this.list[this.used++] = variable;
  }

  closeElement(k: number, start: number, size: number): void {
    this.start[k] = start;
    this.length[k] = this.used - start;
    this.elementCount[k] = 0;
    this.elementSize[k] = size;
    this.live[k] = 1;
  }

  /** Drops what died from the element of `k`, which is the last one in the list. */
  shrinkElement(k: number): void {
    const first = this.start[k]!;
    let end = first;
    for (let p = first; p < first + this.length[k]!; p++)
      if (this.weight[this.list[p]!]! > 0) this.list[end++] = this.list[p]!;
    this.length[k] = end - first;
    this.used = end;
  }

  /** Nodes of `variable` go with `into` from now on. Weights are the caller's. */
  join(variable: number, into: number): void {
    this.nextMember[this.lastMember[into]!] = variable;
    this.lastMember[into] = this.lastMember[variable]!;
  }

  /** Every node that goes with variable `k`, itself first. */
  eachMember(k: number, visit: (node: number) => void): void {
    for (let i = k; i >= 0; i = this.nextMember[i]!) visit(i);
  }
}
