/** A number that was solved for, with what the search says of itself. */
export interface Solved {
  readonly value: number;
  readonly iterations: number;
  /** What is left of the equation at `value`, in the unit of its right-hand side. */
  readonly residual: number;
  readonly converged: boolean;
}

export interface RootAsked {
  readonly low: number;
  readonly high: number;
  /** The bracket is at most this wide when the search is done; in the unit of the unknown. */
  readonly tolerance: number;
}

/** The value of a search whose bracket is known to hold a root; not converging there is a bug and throws. */
export const sure = ({ value, converged, residual }: Solved): number => {
  if (!converged) throw new RangeError(`no root where one must be: ${residual} left at ${value}`);
  return value;
};

/** Halving alone closes the widest bracket of doubles in fewer. */
const LIMIT = 200;

/**
 * The root of a continuous function with f(low) ≥ 0 ≥ f(high): false position with Illinois
 * weights (Dowell and Jarratt 1971), bisection where that closes too little. A bracket whose ends
 * have the wrong signs gives the nearer end, not converged.
 */
export const fallingRoot = (f: (x: number) => number, asked: RootAsked): Solved => {
  let { low, high } = asked;
  let [atLow, atHigh] = [f(low), f(high)];
  if (!(atLow >= 0 && atHigh <= 0)) return outside(asked, atLow, atHigh);
  let iterations = 0;
  while (high - low > asked.tolerance && iterations < LIMIT) {
    const width = high - low;
    const cut = low + (width * atLow) / (atLow - atHigh);
    const x = cut > low && cut < high && iterations % 3 !== 2 ? cut : low + width / 2;
    const y = f(x);
    iterations++;
    if (y === 0) return { value: x, iterations, residual: 0, converged: true };
    if (y > 0) {
      low = x;
      atLow = y;
      atHigh /= 2;
    } else {
      high = x;
      atHigh = y;
      atLow /= 2;
    }
  }
  const value = low + (high - low) / 2;
  const converged = high - low <= asked.tolerance;
  return { value, iterations, residual: f(value), converged };
};

const outside = ({ low, high }: RootAsked, atLow: number, atHigh: number): Solved => {
  const nearer = Math.abs(atLow) <= Math.abs(atHigh);
  return {
    value: nearer ? low : high,
    iterations: 0,
    residual: nearer ? atLow : atHigh,
    converged: false,
  };
};
