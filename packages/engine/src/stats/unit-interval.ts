/**
 * A distribution on [0, 1] held on an even grid: a Beta prior times any number of Gaussian
 * readings. Grid cells are midpoints; density is normalised to sum to one.
 */
export interface UnitDensity {
  readonly cells: Float64Array;
}

const CELLS = 200;
const midpoint = (i: number): number => (i + 0.5) / CELLS;

/** Beta density with this mean (0 to 1, open) and SD; the SD must fit: sd² < mean(1 − mean). */
export const betaDensity = (mean: number, sd: number): UnitDensity => {
  const size = (mean * (1 - mean)) / (sd * sd) - 1;
  if (!(size > 0)) throw new RangeError(`no beta distribution has mean ${mean} and sd ${sd}`);
  const a = mean * size;
  const b = (1 - mean) * size;
  return normalise((x) => (a - 1) * Math.log(x) + (b - 1) * Math.log(1 - x));
};

/** Multiply by a Gaussian likelihood of a reading with this SD. */
export const withReading = (density: UnitDensity, reading: number, sd: number): UnitDensity =>
  normalise((x, i) => Math.log(density.cells[i]!) - ((reading - x) / sd) ** 2 / 2);

export const unitMean = (density: UnitDensity): number =>
  density.cells.reduce((sum, p, i) => sum + p * midpoint(i), 0);

export const unitSd = (density: UnitDensity): number => {
  const mean = unitMean(density);
  return Math.sqrt(density.cells.reduce((sum, p, i) => sum + p * (midpoint(i) - mean) ** 2, 0));
};

/** A function that maps a uniform on (0, 1) to a draw, by the inverse of the piecewise-linear CDF. */
export const unitSampler = (density: UnitDensity): ((uniform: number) => number) => {
  const cdf = new Float64Array(CELLS + 1);
  for (let i = 0; i < CELLS; i++) cdf[i + 1] = cdf[i]! + density.cells[i]!;
  return (uniform) => {
    const target = uniform * cdf[CELLS]!;
    let low = 0;
    let high = CELLS;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (cdf[middle]! <= target) low = middle;
      else high = middle;
    }
    const width = cdf[low + 1]! - cdf[low]!;
    return (low + (width > 0 ? (target - cdf[low]!) / width : 0.5)) / CELLS;
  };
};

const normalise = (logDensity: (x: number, i: number) => number): UnitDensity => {
  const logs = Float64Array.from({ length: CELLS }, (_, i) => logDensity(midpoint(i), i));
  const top = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const cells = logs.map((v) => Math.exp(v - top));
  const sum = cells.reduce((a, b) => a + b, 0);
  return { cells: cells.map((v) => v / sum) };
};
