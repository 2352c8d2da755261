/**
 * Exact fractions of whole numbers of any size. What a knitter writes is a fraction (13 3/8, 34,5),
 * so it is kept as one until the last step, where it becomes the nearest double.
 */
export interface Rational {
  readonly n: bigint;
  /** Always above zero. */
  readonly d: bigint;
}

export const ZERO: Rational = { n: 0n, d: 1n };

/** `d` must not be zero: callers turn a zero denominator into a fault before they come here. */
export function ratio(n: bigint, d: bigint = 1n): Rational {
  if (d === 0n) throw new RangeError('a denominator of zero');
  return d < 0n ? { n: -n, d: -d } : { n, d };
}

export const add = (a: Rational, b: Rational): Rational => ratio(a.n * b.d + b.n * a.d, a.d * b.d);
export const times = (a: Rational, b: Rational): Rational => ratio(a.n * b.n, a.d * b.d);
export const over = (a: Rational, b: Rational): Rational => ratio(a.n * b.d, a.d * b.n);
export const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d });
export const isAbove = (a: Rational, b: Rational): boolean => a.n * b.d > b.n * a.d;

/** Nearest whole number, halves away from zero. */
export function nearestWhole({ n, d }: Rational): bigint {
  const magnitude = ((n < 0n ? -n : n) * 2n + d) / (2n * d);
  return n < 0n ? -magnitude : magnitude;
}

const bits = (value: bigint): number => value.toString(2).length;

/**
 * The double nearest to a fraction. The quotient is taken to at least 64 bits with a last bit that
 * says whether something was left over, so that the one rounding is the conversion to a double.
 */
export function toNumber({ n, d }: Rational): number {
  if (n === 0n) return 0;
  const magnitude = n < 0n ? -n : n;
  const shift = Math.max(0, 66 - bits(magnitude) + bits(d));
  const scaled = magnitude << BigInt(shift);
  const sticky = scaled % d === 0n ? 0n : 1n;
  const value = Number(((scaled / d) << 1n) | sticky) * 2 ** -(shift + 1);
  return n < 0n ? -value : value;
}

/** The fraction that a double is, exactly. `value` must be finite. */
export function fromNumber(value: number): Rational {
  if (!Number.isFinite(value)) throw new RangeError(`not a finite number: ${value}`);
  let scaled = value;
  let d = 1n;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    d *= 2n;
  }
  return { n: BigInt(scaled), d };
}
