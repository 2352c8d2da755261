import { type Cited, type Figure, figure } from '../textile/index.ts';
import {
  type AroundMillimetres,
  type Grams,
  type NewtonPerMillimetre,
  newtonPerMm,
} from '../units/index.ts';
import {
  contractionAtExtension,
  extensionAtLoad,
  meanExtensionTo,
  measuredTo,
} from './extension.ts';
import type { ExtensionRow } from './extension-data.ts';

/** Conventional acceleration of gravity, m/s². */
export const GRAVITY: Figure = figure('cgpm-1901', 'from-memory', 9.80665);

/** A tube of even fabric hung from its top. */
export interface Hanging {
  /** What it weighs as it hangs, water included. */
  readonly mass: Grams;
  /** All around, at rest. */
  readonly girth: AroundMillimetres;
  /** Share of the mass that the top edge carries, 0 to 1; the rest lies on shoulders and arms. 1 by default. */
  readonly topShare?: number;
  /** Load-extension along the height: `rowFor(stitch, fibre, 'length').row`. */
  readonly row: ExtensionRow;
}

export interface HangExtension {
  /** Gain of the whole height, a fraction of it at rest. */
  readonly mean: number;
  /** Gain of the topmost rows. */
  readonly top: number;
  /** Mean change of the width, a negative fraction. */
  readonly narrowing: number;
  readonly topLoad: NewtonPerMillimetre;
  /** True where the top carries more than was read, so that the last tangent was used. */
  readonly beyondReadings: boolean;
}

/** Share of the mass carried where nothing is said: all of it. */
export const TOP_SHARE: Cited & { readonly usual: number } = {
  usual: 1,
  source: null,
  standing: 'assumption',
};

const check = (mass: number, girth: number, share: number): void => {
  if (!(mass >= 0 && girth > 0 && share >= 0 && share <= 1))
    throw new RangeError(`no such hanging: ${mass} g on ${girth} mm, top share ${share}`);
};

/** Line load at the top edge: mass · g / girth. 1 kg on 1 m is 9.8 N/m, 0.0098 N/mm. */
export const topLoad = (
  mass: Grams,
  girth: AroundMillimetres,
  topShare: number = TOP_SHARE.usual,
): NewtonPerMillimetre => {
  check(mass, girth, topShare);
  return newtonPerMm(((mass / 1000) * topShare * GRAVITY.low) / girth);
};

/**
 * Lengthening of a tube under its own weight. A row at height y carries the mass below it, so line
 * loads run evenly from 0 at the hem to the top load, and the mean extension is the mean of the
 * curve over them: the integral is exact, nothing iterates. Loads count per width at rest, as the
 * readings do. What time and water add (creep, a wet fabric's softness) is not in it.
 */
export const hangExtension = ({ mass, girth, topShare, row }: Hanging): HangExtension => {
  const load = topLoad(mass, girth, topShare);
  const mean = meanExtensionTo(row, load);
  return {
    mean,
    top: extensionAtLoad(row, load),
    narrowing: contractionAtExtension(row, mean),
    topLoad: load,
    beyondReadings: load > measuredTo(row),
  };
};
