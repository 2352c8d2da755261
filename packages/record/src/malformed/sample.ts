import type { GarmentRecord } from '../schema/index.ts';
import { sampleOfWork } from './sample-of-work.ts';

/** A small record without fault or doubt, which the malformed ones differ from in one place each. */
export const sample = (): GarmentRecord => ({
  format: 'dryflat-garment',
  version: 4,
  id: 'sample',
  name: 'Sample',
  kind: 'pullover-set-in',
  stitch: 'stockinette',
  needleMm: 4,
  massG: 400,
  wearer: {
    name: 'Somebody',
    group: 'woman',
    body: [
      { landmark: 'chest', mm: 914, from: { kind: 'measured' } },
      { landmark: 'upper-arm', mm: 290, from: { kind: 'table', table: 'a-table', size: 'M' } },
    ],
    wanted: [
      { kind: 'ease', landmark: 'chest', minMm: 50, maxMm: 100 },
      { kind: 'finished', landmark: 'body-length', minMm: 560, maxMm: 600 },
    ],
  },
  pattern: {
    name: 'A pattern',
    gauge: { stitches: 20, rows: 28, overMm: 100, state: 'dried' },
    needleMm: 4,
    sizes: ['S', 'M', 'L'],
    chosen: 'M',
    measurements: [
      {
        id: 'chest',
        name: 'Chest',
        landmark: 'chest',
        span: 'around',
        worked: 'counted',
        values: [900, 1000, 1100],
        counts: [180, 200, 220],
      },
      {
        id: 'length',
        name: 'Length',
        landmark: 'body-length',
        worked: 'to-length',
        values: [560, 580, null],
      },
      {
        id: 'pocket',
        name: 'Pocket',
        landmark: 'pocket',
        direction: 'width',
        span: 'flat',
        worked: 'counted',
        values: [120, 120, 130],
      },
    ],
    repeat: { stitches: 4, plus: 2, rows: 8 },
  },
  yarns: [
    {
      id: 'main',
      name: 'A yarn',
      fibres: [
        { fibre: 'wool', percent: 80 },
        { fibre: 'nylon', percent: 20 },
      ],
      treatment: 'untreated',
      weightClass: 3,
      metresPer100g: 220,
      lots: [{ dyeLot: '1', skeins: 8, gramsEach: 50, metresEach: 110 }],
    },
  ],
  evidence: [
    {
      id: 'swatch',
      name: 'Swatch',
      kind: 'swatch',
      stitch: 'stockinette',
      needleMm: 4,
      workedAsGarment: true,
      widthMm: 180,
      heightMm: 170,
      massG: 14,
      washed: 'as-garment',
      readings: [
        {
          kind: 'count',
          id: 'a',
          direction: 'width',
          count: 20,
          overMm: 100,
          state: 'dried',
          pinned: false,
          read: 'flat',
        },
        {
          kind: 'extent',
          id: 'b',
          direction: 'length',
          mm: 170,
          count: 48,
          state: 'asKnit',
          read: 'flat',
        },
        {
          kind: 'hang',
          id: 'c',
          direction: 'length',
          massG: 100,
          clippedMm: 150,
          beforeMm: 150,
          afterMm: 165,
          state: 'dried',
        },
        { kind: 'set', id: 'd', direction: 'width', restMm: 150, pinnedMm: 170, driedMm: 160 },
      ],
    },
  ],
  pieces: [
    {
      id: 'back',
      name: 'Back',
      measured: [
        {
          id: 'm1',
          measurement: 'chest',
          state: 'asKnit',
          mm: 490,
          span: 'flat',
          on: '2031-01-02',
        },
      ],
    },
  ],
  plan: {
    washing: 'by-hand',
    drying: 'pin',
    pinTo: [{ measurement: 'length', mm: 590 }],
    judgeAt: 'dried',
    finishBy: '2031-02-03',
    weights: { fit: 1, time: 0.5, yarn: 0 },
  },
  forecasts: [
    {
      id: 'f',
      on: '2031-01-01',
      measurements: [
        { measurement: 'chest', state: 'dried', p05Mm: 950, p50Mm: 1000, p95Mm: 1050 },
      ],
    },
  ],
  outcomes: [
    {
      id: 'o',
      washes: 1,
      remark: '',
      measured: [{ id: 'm2', measurement: 'length', state: 'dried', mm: 585 }],
    },
  ],
  notes: [{ id: 'n', text: 'A note.' }],
  ...sampleOfWork(),
});
