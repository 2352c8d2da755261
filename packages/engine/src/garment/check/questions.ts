import { grams, mm } from '../../units/index.ts';
import type { ForecastQuestion, MeasurementWanted } from '../forecast-types.ts';

/** Plain questions for tests: an invented pullover in nine sizes. */
const SIZES = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

const graded = (
  landmark: string,
  direction: 'width' | 'length',
  span: 'flat' | 'around',
  worked: 'counted' | 'to-length',
  first: number,
  step: number,
): MeasurementWanted => ({
  id: landmark,
  name: landmark,
  landmark,
  direction,
  span,
  worked,
  values: SIZES.map((_, i) => mm(first + i * step)),
  counts: SIZES.map(() => null),
  stitch: 'stockinette',
});

export const PULLOVER: ForecastQuestion = {
  kind: 'pullover-set-in',
  stitch: 'stockinette',
  fibres: [{ fibre: 'wool', share: 1 }],
  treatment: 'untreated',
  weightClass: 4,
  metresPer100g: null,
  mass: grams(450),
  needle: null,
  patternNeedle: null,
  patternGauge: { stitch: mm(5), row: mm(3.6), state: 'dried' },
  sizes: SIZES,
  chosen: 3,
  measurements: [
    graded('chest', 'width', 'around', 'counted', 860, 60),
    graded('waist', 'width', 'around', 'counted', 800, 60),
    graded('cross-back', 'width', 'flat', 'counted', 340, 12),
    graded('upper-arm', 'width', 'around', 'counted', 280, 18),
    graded('body-length', 'length', 'flat', 'to-length', 560, 12),
    graded('sleeve-length', 'length', 'flat', 'to-length', 430, 6),
    graded('armhole-depth', 'length', 'flat', 'counted', 180, 8),
  ],
  specimens: [],
  measured: [],
  wanted: [
    {
      landmark: 'chest',
      body: mm(980),
      bodyFrom: 'measured',
      kind: 'ease',
      min: mm(30),
      max: mm(110),
    },
    {
      landmark: 'body-length',
      body: null,
      bodyFrom: null,
      kind: 'finished',
      min: mm(570),
      max: mm(630),
    },
  ],
  drying: 'lay',
  pinTo: [],
  judgeAt: 'worn',
  washing: 'by-hand',
};
