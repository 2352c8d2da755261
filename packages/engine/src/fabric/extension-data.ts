/**
 * How knitted strips lengthen under a line load: computed from the open data set
 * github.com/sabetta/stitch-by-stitch (data/uniaxial_experiments), which accompanies Singal et al.
 * 2024. Its notice is in extension-data.LICENSE.
 *
 * Each strip was clamped and pulled five times. Line load is the force over the width at the clamp;
 * strain is counted from the first frame of the second pull, where the strip already carries a few
 * N/m, so small extensions are read low; pulls 2 to 5 are averaged, with a spread of 0.2 to 1.5
 * points at 0.10 N/mm. Dry, machine-knit, acrylic and cotton; no wool.
 */
import type { Cited } from '../textile/index.ts';
import type { Direction } from './specimen.ts';

export type PulledYarn = 'acrylic' | 'cotton';
export type PulledStitch = 'stockinette' | 'garter' | 'rib-1x1' | 'seed';

/** A point of a load-extension curve: N/mm of width, and fraction of the length at rest. */
export interface LoadPoint {
  readonly load: number;
  readonly extension: number;
}

/** What a curve needs: rising points without the origin, and the change across at 0.10 N/mm. */
export interface ExtensionRow {
  readonly points: readonly LoadPoint[];
  /** Change of the other direction at `REFERENCE_LOAD`, a negative fraction. */
  readonly otherWay: number;
}

/** A measured row. Loads where nothing was read are left out of `points`. */
export type MeasuredRow = ExtensionRow &
  Cited & {
    readonly yarn: PulledYarn;
    readonly stitch: PulledStitch;
    readonly direction: Direction;
    /** Stiffness up to 0.02 N/mm, N/mm per unit strain. */
    readonly lowLoadSlope: number;
    /** The very first pull of a new strip, at 0.05 and 0.10 N/mm: less than later ones. */
    readonly firstPull: readonly [LoadPoint, LoadPoint];
  };

export const REFERENCE_LOAD = 0.1;
const LOADS = [0.005, 0.01, 0.02, 0.05, REFERENCE_LOAD, 0.2, 0.3] as const;

const row = (
  yarn: PulledYarn,
  stitch: PulledStitch,
  direction: Direction,
  lowLoadSlope: number,
  extensions: readonly (number | null)[],
  firstPull: readonly [number, number],
  otherWay: number,
): MeasuredRow => ({
  yarn,
  stitch,
  direction,
  lowLoadSlope,
  points: LOADS.flatMap((load, i) => {
    const extension = extensions[i] ?? null;
    return extension === null ? [] : [{ load, extension }];
  }),
  firstPull: [
    { load: 0.05, extension: firstPull[0] },
    { load: REFERENCE_LOAD, extension: firstPull[1] },
  ],
  otherWay,
  source: 'singal-2024-data',
  standing: 'data',
});

export const EXTENSION_ROWS: readonly MeasuredRow[] = [
  row(
    'acrylic',
    'stockinette',
    'width',
    0.331,
    [0.004, 0.01, 0.046, 0.154, 0.271, 0.394, 0.456],
    [0.136, 0.255],
    -0.102,
  ),
  row(
    'acrylic',
    'stockinette',
    'length',
    0.41,
    [null, 0.015, 0.036, 0.082, 0.143, 0.226, 0.269],
    [0.065, 0.141],
    -0.086,
  ),
  row(
    'cotton',
    'stockinette',
    'width',
    0.135,
    [0.024, 0.051, 0.107, 0.298, 0.427, 0.533, 0.566],
    [0.291, 0.4],
    -0.189,
  ),
  row(
    'cotton',
    'stockinette',
    'length',
    0.359,
    [null, 0.016, 0.027, 0.078, 0.128, 0.182, 0.216],
    [0.045, 0.104],
    -0.054,
  ),
  row(
    'acrylic',
    'garter',
    'width',
    0.196,
    [null, 0.016, 0.059, 0.198, 0.331, 0.473, 0.541],
    [0.175, 0.297],
    -0.157,
  ),
  row(
    'acrylic',
    'garter',
    'length',
    0.086,
    [0.027, 0.076, 0.195, 0.403, 0.573, 0.701, null],
    [0.361, 0.531],
    -0.066,
  ),
  row(
    'cotton',
    'garter',
    'width',
    0.082,
    [0.033, 0.102, 0.176, 0.359, 0.461, 0.532, 0.572],
    [0.318, 0.424],
    -0.253,
  ),
  row(
    'cotton',
    'garter',
    'length',
    0.053,
    [0.098, 0.2, 0.341, 0.541, 0.701, 0.822, null],
    [0.463, 0.655],
    -0.106,
  ),
  row(
    'acrylic',
    'rib-1x1',
    'width',
    0.0165,
    [0.182, 0.561, 0.965, 1.429, 1.727, 1.937, 2.026],
    [1.337, 1.659],
    -0.324,
  ),
  row(
    'acrylic',
    'rib-1x1',
    'length',
    0.138,
    [0.027, 0.056, 0.134, 0.261, 0.37, 0.466, 0.516],
    [0.221, 0.343],
    -0.104,
  ),
  row(
    'cotton',
    'rib-1x1',
    'width',
    0.011,
    [0.76, 1.076, 1.334, 1.608, 1.744, 1.862, 1.913],
    [1.477, 1.641],
    -0.254,
  ),
  row(
    'cotton',
    'rib-1x1',
    'length',
    0.066,
    [0.062, 0.13, 0.248, 0.358, 0.435, 0.501, 0.539],
    [0.306, 0.384],
    -0.075,
  ),
  row(
    'acrylic',
    'seed',
    'width',
    0.093,
    [0.032, 0.066, 0.168, 0.327, 0.44, 0.537, 0.587],
    [0.293, 0.4],
    -0.19,
  ),
  row(
    'acrylic',
    'seed',
    'length',
    0.058,
    [0.121, 0.204, 0.354, 0.619, 0.792, 0.941, null],
    [0.562, 0.769],
    -0.106,
  ),
  row(
    'cotton',
    'seed',
    'width',
    0.06,
    [0.061, 0.166, 0.282, 0.43, 0.51, 0.574, 0.604],
    [0.395, 0.48],
    -0.226,
  ),
  row(
    'cotton',
    'seed',
    'length',
    0.071,
    [0.053, 0.131, 0.238, 0.397, 0.509, 0.61, null],
    [0.374, 0.493],
    -0.135,
  ),
];

/** Total: the table holds every yarn, stitch and direction. */
export const measuredRow = (
  yarn: PulledYarn,
  stitch: PulledStitch,
  direction: Direction,
): MeasuredRow =>
  EXTENSION_ROWS.find(
    (each) => each.yarn === yarn && each.stitch === stitch && each.direction === direction,
  )!;
