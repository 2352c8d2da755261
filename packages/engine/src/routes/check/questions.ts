import { PULLOVER } from '../../garment/check/questions.ts';
import { mm } from '../../units/index.ts';
import type { RoutesQuestion } from '../types.ts';

/** An invented pullover, its back knit and its front begun, measured once and a little narrow. */
export const QUESTION: RoutesQuestion = {
  forecast: {
    ...PULLOVER,
    needle: mm(4),
    patternNeedle: mm(4),
    specimens: [
      {
        id: 'swatch',
        name: 'Swatch',
        kind: 'swatch',
        stitch: 'stockinette',
        workedAsGarment: true,
        needle: mm(4),
        washed: 'as-garment',
        width: mm(160),
        height: mm(160),
        readings: (['width', 'length'] as const).map((direction) => ({
          kind: 'count',
          id: `${direction}-asKnit`,
          direction,
          count: direction === 'width' ? 20.5 : 28,
          over: mm(100),
          state: 'asKnit',
          read: 'flat',
          place: 'middle',
        })),
      },
    ],
    measured: [{ id: 'back', measurement: 'chest', state: 'asKnit', value: mm(500), span: 'flat' }],
    wanted: [
      ...PULLOVER.wanted,
      {
        landmark: 'upper-arm',
        body: mm(320),
        bodyFrom: 'table',
        kind: 'ease',
        min: mm(20),
        max: mm(70),
      },
    ],
  },
  wearer: 'Somebody',
  people: [
    {
      id: 'other',
      name: 'Somebody else',
      body: [
        { body: 'chest', mm: mm(920), from: 'measured' },
        { body: 'upper-arm', mm: mm(300), from: 'measured' },
      ],
    },
  ],
  tables: true,
  progress: [
    { piece: 'back', share: 1 },
    { piece: 'front', share: 0.4 },
  ],
  progressSaid: true,
  dried: false,
  repeat: null,
  weighed: [],
  stock: { lots: [{ dyeLot: '1', skeins: 9, gramsEach: 50, metresEach: 100 }], leftG: null },
  pace: {
    log: [{ minutes: 60, stitches: 1500, fabric: 'plain' }],
    hours: [1, 1, 1, 1, 1, 2, 2],
    away: ['2031-01-18'],
    shopDays: 6,
  },
  dryingHours: { p5: 20, p50: 34, p95: 60 },
  from: '2031-01-13',
  by: '2031-02-14',
  weights: { fit: 1, time: 0.5, yarn: 0.25 },
};
