/**
 * Which unknowns of each node are prescribed, in axes of the node's own: x and y, or for a node that
 * slides, along its line and across it. Unknown 0 of node i is `2 i`, unknown 1 is `2 i + 1`.
 */
export class Frames {
  /** 1 where the unknown is prescribed. */
  readonly fixed: Uint8Array;
  /** 1 where a node has axes of its own. */
  readonly turned: Uint8Array;
  readonly cos: Float64Array;
  readonly sin: Float64Array;

  constructor(nodes: number) {
    this.fixed = new Uint8Array(2 * nodes);
    this.turned = new Uint8Array(nodes);
    this.cos = new Float64Array(nodes).fill(1);
    this.sin = new Float64Array(nodes);
  }

  free(node: number): void {
    this.set(node, 1, 0, 0, 0);
  }

  hold(node: number): void {
    this.set(node, 1, 0, 1, 1);
  }

  /** Along (cos, sin) the node is free, across it is prescribed. */
  slide(node: number, cos: number, sin: number): void {
    this.set(node, cos, sin, 0, 1);
  }

  private set(node: number, cos: number, sin: number, along: 0 | 1, across: 0 | 1): void {
    this.cos[node] = cos;
    this.sin[node] = sin;
    this.turned[node] = sin === 0 && cos === 1 ? 0 : 1;
    this.fixed[2 * node] = along;
    this.fixed[2 * node + 1] = across;
  }

  /** A vector of x and y components into the nodes' own axes, in place. */
  intoOwn(vector: Float64Array): void {
    this.turn(vector, 1);
  }

  /** Back to x and y, in place. */
  intoShared(vector: Float64Array): void {
    this.turn(vector, -1);
  }

  private turn(vector: Float64Array, way: 1 | -1): void {
    for (let i = 0; i < this.turned.length; i++) {
      if (this.turned[i] === 0) continue;
      const [cos, sin] = [this.cos[i]!, way * this.sin[i]!];
      const [x, y] = [vector[2 * i]!, vector[2 * i + 1]!];
      vector[2 * i] = cos * x + sin * y;
      vector[2 * i + 1] = cos * y - sin * x;
    }
  }

  /**
   * Turns an element matrix (packed upper triangle by rows, two unknowns a corner) into the axes of its
   * nodes, in place.
   */
  turnElement(packed: Float64Array, nodes: readonly number[]): void {
    for (let k = 0; k < nodes.length; k++)
      if (this.turned[nodes[k]!] === 1) this.turnCorner(packed, 2 * nodes.length, k, nodes[k]!);
  }

  private turnCorner(packed: Float64Array, m: number, k: number, node: number): void {
    const [cos, sin] = [this.cos[node]!, this.sin[node]!];
    const [i, j] = [2 * k, 2 * k + 1];
    for (let other = 0; other < m; other++) {
      if (other === i || other === j) continue;
      const [p, q] = [place(m, i, other), place(m, j, other)];
      const [u, v] = [packed[p]!, packed[q]!];
      packed[p] = cos * u + sin * v;
      packed[q] = cos * v - sin * u;
    }
    const [xx, xy, yy] = [place(m, i, i), place(m, i, j), place(m, j, j)];
    const [a, b, c] = [packed[xx]!, packed[xy]!, packed[yy]!];
    packed[xx] = cos * cos * a + 2 * cos * sin * b + sin * sin * c;
    packed[xy] = cos * sin * (c - a) + (cos * cos - sin * sin) * b;
    packed[yy] = sin * sin * a - 2 * cos * sin * b + cos * cos * c;
  }
}

/** Position of (row, column) in the packed upper triangle, by rows, of an m × m matrix. */
const place = (m: number, row: number, column: number): number => {
  const [i, j] = row < column ? [row, column] : [column, row];
  return i * m - (i * (i - 1)) / 2 + (j - i);
};
