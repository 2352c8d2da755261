/** Values of triangles as values of nodes: the mean of the triangles around each. 0 where there are none. */
export const nodeField = (
  triangles: Uint32Array,
  values: Float32Array,
  nodes: number,
): Float32Array => {
  const sum = new Float32Array(nodes);
  const count = new Uint16Array(nodes);
  triangles.forEach((node, k) => {
    sum[node]! += values[Math.floor(k / 3)]!;
    count[node]! += 1;
  });
  return sum.map((each, node) => each / Math.max(1, count[node]!));
};

/** Ends of the scale that are used, as shares of what the fabric can do. */
const ENDS = [0.25, 0.5, 0.75, 1] as const;

/** The first end of the scale that holds the worst place. */
export const endOfScale = (worst: number): number => ENDS.find((end) => worst <= end) ?? 1;
