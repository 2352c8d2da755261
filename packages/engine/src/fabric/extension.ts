import { type ExtensionRow, REFERENCE_LOAD } from './extension-data.ts';
import { evaluate, integral, type Knot, monotoneKnots } from './monotone-cubic.ts';

/** Curves are built once per row. A cache of pure results: nobody can tell that it is there. */
const curves = new WeakMap<ExtensionRow, readonly Knot[]>();

/** The curve of a row: monotone, through the origin and every point read. */
const curveOf = (row: ExtensionRow): readonly Knot[] => {
  const known = curves.get(row);
  if (known) return known;
  const points = row.points.map(({ load, extension }) => ({ x: load, y: extension }));
  const knots = monotoneKnots([{ x: 0, y: 0 }, ...points]);
  curves.set(row, knots);
  return knots;
};

const checkLoad = (load: number): number => {
  if (!(load >= 0 && Number.isFinite(load))) throw new RangeError(`line load ${load} N/mm`);
  return load;
};

/** The largest load that was read, N/mm; beyond it curves go on along their last tangent. */
export const measuredTo = (row: ExtensionRow): number => row.points[row.points.length - 1]!.load;

/** Extension, a fraction of the length at rest, under a line load of N per mm of width at rest. */
export const extensionAtLoad = (row: ExtensionRow, load: number): number =>
  evaluate(curveOf(row), checkLoad(load));

/** Mean extension over loads spread evenly from 0 to `load`: what a strip hung from its top has. */
export const meanExtensionTo = (row: ExtensionRow, load: number): number =>
  checkLoad(load) === 0 ? 0 : integral(curveOf(row), 0, load) / load;

/** Change of the other direction, a negative fraction, in proportion to the extension. */
export const contractionAtLoad = (row: ExtensionRow, load: number): number =>
  contractionAtExtension(row, extensionAtLoad(row, load));

export const contractionAtExtension = (row: ExtensionRow, extension: number): number =>
  (row.otherWay * extension) / extensionAtLoad(row, REFERENCE_LOAD);

export interface Solved {
  readonly value: number;
  readonly iterations: number;
  /** Extension at `value` less the extension asked for. */
  readonly residual: number;
  readonly converged: boolean;
}

/** A hundredth of a point per thousand: far below what any reading resolves. */
const CLOSE_ENOUGH = 1e-9;
const MOST_HALVINGS = 200;

/** Smallest doubling of the measured range whose end extends at least that far. */
const bracket = (row: ExtensionRow, extension: number): number => {
  let high = measuredTo(row);
  for (let i = 0; i < 60 && extensionAtLoad(row, high) < extension; i++) high *= 2;
  return high;
};

/**
 * Line load that gives an extension (0 or more), by bisection. `converged` is false where the curve
 * ends level below the extension asked for, so that no load reaches it.
 */
export const loadAtExtension = (row: ExtensionRow, extension: number): Solved => {
  if (!(extension >= 0 && Number.isFinite(extension)))
    throw new RangeError(`extension ${extension}`);
  let low = 0;
  let high = bracket(row, extension);
  let iterations = 0;
  const miss = (load: number) => extensionAtLoad(row, load) - extension;
  while (iterations < MOST_HALVINGS && high - low > Number.EPSILON * high) {
    const half = (low + high) / 2;
    if (miss(half) < 0) low = half;
    else high = half;
    iterations += 1;
  }
  const residual = miss(high);
  return { value: high, iterations, residual, converged: Math.abs(residual) <= CLOSE_ENOUGH };
};
