import type { WeighedFabric, YarnQuestion, YarnStock, YarnWork } from '../types.ts';

/** Worsted wool at 20 stitches and 28 rows over 4 in, nothing weighed. */
export const WORSTED: YarnQuestion = {
  metresPer100g: 180,
  weightClass: 4,
  fibres: [{ fibre: 'wool', share: 1 }],
  gauge: {
    stitch: 'stockinette',
    width: { median: 5.08, logSd: 0.02 },
    row: { median: 101.6 / 28, logSd: 0.02 },
    state: 'asKnit',
  },
  weighed: [],
};

/** 40 × 56 stitches in 24 g: with the edges 57.58 rows, so 10.4 mg a stitch. */
export const SWATCH: WeighedFabric = {
  id: 's1',
  name: 'Swatch',
  stitch: 'stockinette',
  massG: 24,
  across: 40,
  up: 56,
  counts: 'counted',
};

export const SWATCHED: YarnQuestion = { ...WORSTED, weighed: [SWATCH] };

export const PULLOVER: YarnWork = {
  parts: [
    { name: 'the body', stitch: 'stockinette', stitches: 26_000 },
    { name: 'the sleeves', stitch: 'stockinette', stitches: 15_000 },
    { name: 'the yoke', stitch: 'garter', stitches: 6000 },
  ],
  castOn: 280,
  bindOff: 120,
  seamsMm: 1200,
  joins: 8,
  ripped: [],
};

export const SKEINS: YarnStock = {
  lots: [
    { dyeLot: 'A', skeins: 6, gramsEach: 50, metresEach: 90 },
    { dyeLot: 'B', skeins: 4, gramsEach: 50, metresEach: 90 },
  ],
  leftG: null,
};
