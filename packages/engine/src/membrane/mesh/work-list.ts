const BUCKETS = 48;

/** Triangles to mend, worst bucket first, in order of arrival within one. */
export class WorkList {
  private readonly buckets: number[][] = Array.from({ length: BUCKETS }, () => []);
  private readonly heads = new Int32Array(BUCKETS);
  private top = -1;

  /** `bucket` 0 to 47; the stamp tells whether the triangle is still the same. */
  push(bucket: number, triangle: number, stamp: number): void {
    this.buckets[bucket]!.push(triangle, stamp);
    if (bucket > this.top) this.top = bucket;
  }

  /** The next triangle whose stamp still holds, or −1. */
  pop(stamps: Int32Array): number {
    while (this.top >= 0) {
      const bucket = this.buckets[this.top]!;
      const head = this.heads[this.top]!;
      if (head < bucket.length) {
        this.heads[this.top] = head + 2;
        if (stamps[bucket[head]!] === bucket[head + 1]) return bucket[head]!;
      } else {
        bucket.length = 0;
        this.heads[this.top--] = 0;
      }
    }
    return -1;
  }
}
