import type { WeightClass } from './fibre-names.ts';
import type { Cited } from './references.ts';

/**
 * A class of the standard yarn weight system. Stitches are of stockinette over 4 in (101.6 mm);
 * gauges are the ones most commonly used, guidelines only. Null: open-ended.
 */
export type YarnWeight = Cited & {
  readonly weightClass: WeightClass;
  readonly names: readonly string[];
  readonly stitchesPer4in: { readonly low: number | null; readonly high: number };
  readonly needleMm: { readonly low: number; readonly high: number | null };
  readonly needleUs: { readonly low: string; readonly high: string | null };
  /** Metres per 100 g, from a conversion sheet and not from the system itself. */
  readonly metresPer100g: { readonly low: number | null; readonly high: number | null } & Cited;
};

const weight = (
  weightClass: WeightClass,
  names: readonly string[],
  stitches: readonly [number | null, number],
  needleMm: readonly [number, number | null],
  needleUs: readonly [string, string | null],
  metres: readonly [number | null, number | null],
): YarnWeight => ({
  weightClass,
  names,
  stitchesPer4in: { low: stitches[0], high: stitches[1] },
  needleMm: { low: needleMm[0], high: needleMm[1] },
  needleUs: { low: needleUs[0], high: needleUs[1] },
  metresPer100g: {
    low: metres[0],
    high: metres[1],
    source: 'yarn-metres-sheet',
    standing: 'read',
  },
  source: 'cyc-yarn-weights',
  standing: 'read',
});

/** One printing gives US 3 to 5 for class 3; its own millimetres and other printings say 5 to 7. */
export const YARN_WEIGHTS: readonly YarnWeight[] = [
  weight(0, ['lace'], [33, 40], [1.5, 2.25], ['000', '1'], [600, null]),
  weight(1, ['super fine', 'sock', 'fingering'], [27, 32], [2.25, 3.25], ['1', '3'], [420, 580]),
  weight(2, ['fine', 'sport', 'baby'], [23, 26], [3.25, 3.75], ['3', '5'], [260, 400]),
  weight(3, ['light', 'DK', 'light worsted'], [21, 24], [3.75, 4.5], ['5', '7'], [210, 250]),
  weight(4, ['medium', 'worsted', 'aran'], [16, 20], [4.5, 5.5], ['7', '9'], [130, 200]),
  weight(5, ['bulky', 'chunky'], [12, 15], [5.5, 8], ['9', '11'], [90, 120]),
  weight(6, ['super bulky', 'roving'], [7, 11], [8, 12.75], ['11', '17'], [40, 80]),
  weight(7, ['jumbo'], [null, 6], [12.75, null], ['17', null], [null, 40]),
];

interface Interval {
  readonly low: number | null;
  readonly high: number | null;
}

/** How far a value lies outside an interval, as a ratio of logs; 0 inside. */
const distance = (value: number, { low, high }: Interval): number => {
  if (low !== null && value < low) return Math.log(low / value);
  if (high !== null && value > high) return Math.log(value / high);
  return 0;
};

export interface ClassGuess {
  /** Classes that hold the value, or the nearest ones where none does; ranges overlap, so 1 to 2. */
  readonly classes: readonly WeightClass[];
  /** False where the value falls between the printed ranges or beyond them. */
  readonly inside: boolean;
}

const nearest = (value: number, of: (row: YarnWeight) => Interval): ClassGuess => {
  if (!(value > 0 && Number.isFinite(value)))
    throw new RangeError(`not a positive value: ${value}`);
  const least = Math.min(...YARN_WEIGHTS.map((row) => distance(value, of(row))));
  const classes = YARN_WEIGHTS.filter((row) => distance(value, of(row)) - least < 1e-12);
  return { classes: classes.map((row) => row.weightClass), inside: least === 0 };
};

/** Classes for a stockinette gauge, stitches over 4 in. 23.5 belongs to both class 2 and class 3. */
export const weightClassForGauge = (stitchesPer4in: number): ClassGuess =>
  nearest(stitchesPer4in, (row) => row.stitchesPer4in);

/** Classes for a yarn of so many metres in 100 g. */
export const weightClassForMetres = (metresPer100g: number): ClassGuess =>
  nearest(metresPer100g, (row) => row.metresPer100g);

export const yarnWeight = (weightClass: WeightClass): YarnWeight => YARN_WEIGHTS[weightClass]!;
