/** Degrees that follow a bump or a step well enough to choose by, and cost few draws each. */
const DEGREE = { one: 8, two: 4 } as const;

/** A reading less its mean, in SDs; 0 where it never differs. */
const standard = (reading: Float64Array): Float64Array => {
  const n = reading.length;
  const mean = reading.reduce((sum, each) => sum + each, 0) / n;
  const sd = Math.sqrt(reading.reduce((sum, each) => sum + (each - mean) ** 2, 0) / n);
  return reading.map((each) => (sd > 0 ? (each - mean) / sd : 0));
};

/**
 * Hermite polynomials of a standard normal up to a degree, each of SD 1: He₀ = 1, He₁ = x,
 * Heₖ₊₁ = x Heₖ − k Heₖ₋₁, over √k!.
 */
const hermite = (x: Float64Array, degree: number): Float64Array[] => {
  const out = [new Float64Array(x.length).fill(1), x];
  for (let k = 1; k < degree; k++) {
    const [last, before] = [out[k]!, out[k - 1]!];
    const [a, b] = [1 / Math.sqrt(k + 1), Math.sqrt(k / (k + 1))];
    out.push(x.map((each, i) => a * each * last[i]! - b * before[i]!));
  }
  return out;
};

/** Columns that a worth is regressed on: polynomials of one reading, or of two up to a total degree. */
export const polynomialsOf = (readings: readonly Float64Array[]): Float64Array[] => {
  const [first, second] = readings.map(standard);
  if (first === undefined) throw new RangeError('a measurement without a reading');
  if (second === undefined) return hermite(first, DEGREE.one);
  const [a, b] = [hermite(first, DEGREE.two), hermite(second, DEGREE.two)];
  return a.flatMap((p, j) =>
    b.slice(0, DEGREE.two - j + 1).map((q) => p.map((each, i) => each * q[i]!)),
  );
};
