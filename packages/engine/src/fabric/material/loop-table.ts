import type { Cited } from '../../textile/index.ts';

/**
 * Width of a stitch and height of a row, mm, of free-edged stockinette pulled in width: the yarn-level
 * energy minimisation in the open data set of Singal et al. 2024 (sample analysis, core300x), acrylic
 * worsted, 11.28 mm of yarn per stitch. The first pair is all but at rest.
 */
export const LOOP_TABLE: Cited & { readonly rows: readonly (readonly [number, number])[] } = {
  source: 'singal-2024-data',
  standing: 'data',
  rows: [
    [2.8, 2.128],
    [3.07, 2.035],
    [3.25, 1.974],
    [3.52, 1.884],
    [3.79, 1.795],
    [4.06, 1.708],
    [4.33, 1.623],
    [4.6, 1.54],
    [4.87, 1.455],
    [5.05, 1.401],
    [5.32, 1.318],
  ],
};

/** Height lost per width gained, both as fractions of rest, between the first two rows: 0.45. */
export const startNarrowing = (): number => {
  const [[w0, h0], [w1, h1]] = LOOP_TABLE.rows as unknown as readonly [
    readonly [number, number],
    readonly [number, number],
  ];
  return (h0 - h1) / h0 / ((w1 - w0) / w0);
};
