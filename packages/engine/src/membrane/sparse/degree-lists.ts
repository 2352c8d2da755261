/**
 * Items 0 … count - 1 in lists by degree, so that one of least degree is found at once: doubly linked
 * lists in arrays. Within a degree the last one put in comes out first.
 */
export class DegreeLists {
  private readonly head: Int32Array;
  private readonly next: Int32Array;
  private readonly previous: Int32Array;
  private readonly degree: Int32Array;
  private least = 0;

  /** Degrees are 0 … count. */
  constructor(count: number) {
    this.head = new Int32Array(count + 1).fill(-1);
    this.next = new Int32Array(count).fill(-1);
    this.previous = new Int32Array(count).fill(-1);
    this.degree = new Int32Array(count);
  }

  put(item: number, degree: number): void {
    const first = this.head[degree]!;
    this.degree[item] = degree;
    this.next[item] = first;
    this.previous[item] = -1;
    if (first >= 0) this.previous[first] = item;
    this.head[degree] = item;
    if (degree < this.least) this.least = degree;
  }

  take(item: number): void {
    const before = this.previous[item]!;
    const after = this.next[item]!;
    if (before >= 0) this.next[before] = after;
    else this.head[this.degree[item]!] = after;
    if (after >= 0) this.previous[after] = before;
  }

  /** Takes out an item of least degree. At least one must be in. */
  takeLeast(): number {
    while (this.head[this.least]! < 0) this.least += 1;
    const item = this.head[this.least]!;
    this.take(item);
    return item;
  }
}
