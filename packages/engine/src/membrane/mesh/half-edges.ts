import { inCircle, orient } from './predicates.ts';

/** The next and the previous half-edge of the same triangle. */
export const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);
export const prev = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1);

/** No twin, no segment. */
export const NONE = -1;

const grown = <T extends Float64Array | Int32Array>(from: T, length: number): T => {
  const to = new (from.constructor as new (n: number) => T)(length);
  to.set(from);
  return to;
};

/**
 * A constrained Delaunay triangulation that grows. Half-edge 3t + i runs from node `tail[3t + i]`
 * to the next of triangle t, counter-clockwise; `twin` is the opposite one, NONE outside; `segment`
 * is the piece of the outline or of a line that it lies on, NONE for a free edge.
 */
export class HalfEdges {
  nodes = 0;
  triangles = 0;
  x: Float64Array;
  y: Float64Array;
  tail: Int32Array;
  twin: Int32Array;
  segment: Int32Array;
  /** Changes whenever the slot of a triangle is written anew. */
  born: Int32Array;
  /** The triangles of the last insertion. */
  readonly fan: number[] = [];
  private births = 0;
  private readonly cavity: number[] = [];
  private readonly rim: number[] = [];
  private readonly pending: number[] = [];
  private rimData = new Int32Array(256);

  constructor(nodes: number) {
    this.x = new Float64Array(nodes);
    this.y = new Float64Array(nodes);
    this.tail = new Int32Array(6 * nodes);
    this.twin = new Int32Array(6 * nodes);
    this.segment = new Int32Array(6 * nodes);
    this.born = new Int32Array(2 * nodes);
  }

  head(e: number): number {
    return this.tail[next(e)]!;
  }

  addNode(x: number, y: number): number {
    if (this.nodes === this.x.length) {
      this.x = grown(this.x, 2 * this.nodes);
      this.y = grown(this.y, 2 * this.nodes);
    }
    this.x[this.nodes] = x;
    this.y[this.nodes] = y;
    return this.nodes++;
  }

  addTriangle(): number {
    if (this.triangles === this.born.length) {
      const length = 2 * this.triangles;
      this.tail = grown(this.tail, 3 * length);
      this.twin = grown(this.twin, 3 * length);
      this.segment = grown(this.segment, 3 * length);
      this.born = grown(this.born, length);
    }
    return this.triangles++;
  }

  link(a: number, b: number): void {
    this.twin[a] = b;
    if (b !== NONE) this.twin[b] = a;
  }

  /** Turns the free edge e within the two triangles beside it, which form a convex quadrilateral. */
  flip(e: number): void {
    const { tail, twin, segment } = this;
    const f = twin[e]!;
    const [en, ep, fn, fp] = [next(e), prev(e), next(f), prev(f)];
    const [c, d] = [tail[ep]!, tail[fp]!];
    const [enTwin, fnTwin, enId, fnId] = [twin[en]!, twin[fn]!, segment[en]!, segment[fn]!];
    // e: a→b, c above, d below. Afterwards e's triangle is a, d, c and f's is b, c, d.
    tail[en] = d;
    tail[fn] = c;
    this.link(e, fnTwin);
    segment[e] = fnId;
    this.link(f, enTwin);
    segment[f] = enId;
    this.link(en, fn);
    segment[en] = segment[fn] = NONE;
  }

  /** Positive when the place lies left of half-edge e. */
  sideOf(e: number, x: number, y: number): number {
    const [a, b] = [this.tail[e]!, this.head(e)];
    return orient(this.x[a]!, this.y[a]!, this.x[b]!, this.y[b]!, x, y);
  }

  /** The place lies inside the circle of triangle t. */
  circleHolds(t: number, x: number, y: number): boolean {
    const { x: X, y: Y, tail } = this;
    const [a, b, c] = [tail[3 * t]!, tail[3 * t + 1]!, tail[3 * t + 2]!];
    return inCircle(X[a]!, Y[a]!, X[b]!, Y[b]!, X[c]!, Y[c]!, x, y) > 0;
  }

  /**
   * Gathers the triangles whose circle holds the place and that are not behind a segment, starting
   * from triangle t which holds it or, `from` ≥ 0, from the triangle beside segment `from` on which
   * it lies. Nothing is changed. Returns the rim, counter-clockwise: it is seen whole from the place
   * because predicates are exact, so that the cavity is star-shaped.
   */
  openCavity(t: number, x: number, y: number, from: number): readonly number[] {
    this.cavity.length = 0;
    this.rim.length = 0;
    this.cavity.push(t);
    if (from === NONE) {
      for (let e = 3 * t; e < 3 * t + 3; e++) this.widen(e, x, y);
    } else {
      this.widen(next(from), x, y);
      this.widen(prev(from), x, y);
    }
    return this.rim;
  }

  /** Depth first and from the right, which keeps the rim in order; by a stack, as rims may be long. */
  private widen(first: number, x: number, y: number): void {
    const { pending, rim, cavity, twin, segment } = this;
    pending.push(first);
    while (pending.length > 0) {
      const e = pending.pop()!;
      const beyond = twin[e]!;
      const t = (beyond / 3) | 0;
      if (segment[e] !== NONE || beyond === NONE || !this.circleHolds(t, x, y)) {
        rim.push(e);
        continue;
      }
      cavity.push(t);
      pending.push(prev(beyond), next(beyond));
    }
  }

  /** Fills the open cavity with a fan around node p; the fan closes when p is not on its rim. */
  fillCavity(p: number, closed: boolean): void {
    const { rim, cavity, fan } = this;
    const data = this.copyRim();
    while (cavity.length < rim.length) cavity.push(this.addTriangle());
    const { tail, twin, segment, born } = this;
    for (let i = 0; i < rim.length; i++) {
      const t = cavity[i]!;
      const e = 3 * t;
      tail[e] = p;
      tail[e + 1] = data[4 * i]!;
      tail[e + 2] = data[4 * i + 1]!;
      segment[e] = segment[e + 2] = twin[e] = twin[e + 2] = NONE;
      segment[e + 1] = data[4 * i + 3]!;
      this.link(e + 1, data[4 * i + 2]!);
      if (i > 0) this.link(3 * cavity[i - 1]! + 2, e);
      born[t] = ++this.births;
      fan.push(t);
    }
    if (closed) this.link(3 * cavity[rim.length - 1]! + 2, 3 * cavity[0]!);
  }

  /** Tail, head, twin and segment of every half-edge of the rim, before its slots are written. */
  private copyRim(): Int32Array {
    const { rim, tail, twin, segment } = this;
    if (this.rimData.length < 4 * rim.length) this.rimData = new Int32Array(8 * rim.length);
    const data = this.rimData;
    for (let i = 0; i < rim.length; i++) {
      const e = rim[i]!;
      data[4 * i] = tail[e]!;
      data[4 * i + 1] = this.head(e);
      data[4 * i + 2] = twin[e]!;
      data[4 * i + 3] = segment[e]!;
    }
    return data;
  }

  /** A new node within the cavity that was opened last around this place. */
  insertInCavity(x: number, y: number): number {
    this.fan.length = 0;
    const p = this.addNode(x, y);
    this.fillCavity(p, true);
    return p;
  }

  /**
   * A new node that divides segment e. It may be off the line by rounding: the division is made by
   * connection, not by geometry. NONE, and nothing changed, where rounding would turn a triangle.
   */
  splitSegment(e: number, x: number, y: number): number {
    const other = this.twin[e]!;
    if (!this.seenFrom(e, x, y) || (other !== NONE && !this.seenFrom(other, x, y))) return NONE;
    this.fan.length = 0;
    const id = this.segment[e]!;
    const p = this.addNode(x, y);
    const [first, last] = this.halfFan(e, p, id);
    if (other === NONE) return p;
    const [otherFirst, otherLast] = this.halfFan(other, p, id);
    this.link(first, otherLast);
    this.link(last, otherFirst);
    return p;
  }

  private seenFrom(e: number, x: number, y: number): boolean {
    return this.sideOf(next(e), x, y) > 0 && this.sideOf(prev(e), x, y) > 0;
  }

  /** Returns the two halves of the segment on this side: away from p, and towards it. */
  private halfFan(e: number, p: number, id: number): readonly [number, number] {
    const rim = this.openCavity((e / 3) | 0, this.x[p]!, this.y[p]!, e);
    const count = rim.length;
    this.fillCavity(p, false);
    const first = 3 * this.cavity[0]!;
    const last = 3 * this.cavity[count - 1]! + 2;
    this.segment[first] = this.segment[last] = id;
    return [first, last];
  }
}
