import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, Pattern, PatternMeasurement } from '../schema/index.ts';
import { directionOf } from '../spans/girths.ts';
import { lengthText } from '../text/lengths.ts';
import { fault } from './doubt.ts';

/**
 * Stitches and rows of hand knitting lie between these, in millimetres: finer than the finest lace
 * needle gives, coarser than arm knitting. Common practice, no source; set wide on purpose.
 */
export const LEAST_PITCH_MM = 0.5;
export const MOST_PITCH_MM = 60;

/** Beyond these it is no doubt any more but a slip, and nothing can be worked out from it. */
const LEAST_POSSIBLE_MM = 0.3;
const MOST_POSSIBLE_MM = 100;

/** A row of the table whose counts and values differ more than this from its gauge is a likely misprint. */
const GAUGE_SLACK = 1.35;

/** A doubt where one stitch or row would be unlikely fine or coarse, a fault where it cannot be. */
export const pitchFaults = (field: string, count: number, overMm: number): Fault[] => {
  const pitch = overMm / count;
  if (pitch >= LEAST_PITCH_MM && pitch <= MOST_PITCH_MM) return [];
  // What lies beyond all bounds by itself is told as that.
  if (!(pitch > 1e-6 && pitch < 1e6)) return [];
  const each = `${count} over ${lengthText(overMm)} makes each ${Number(pitch.toPrecision(3))} mm`;
  const mend = 'Check the count and the length that it was taken over';
  return pitch >= LEAST_POSSIBLE_MM && pitch <= MOST_POSSIBLE_MM
    ? [fault('doubt-pitch', field, count, `${each}, which no hand knitting is`, `${mend}.`)]
    : [
        fault(
          'pitch-impossible',
          field,
          count,
          `${each}, which nothing knit can be`,
          `${mend}; a stitch or row goes from ${LEAST_POSSIBLE_MM} to ${MOST_POSSIBLE_MM} mm.`,
        ),
      ];
};

/** Faults and doubts of the pattern's gauge, and about counts that do not belong to their values at that gauge. */
export const gaugeFaults = ({ pattern }: GarmentRecord): Fault[] => [
  ...(pattern.gauge === undefined
    ? []
    : [
        ...pitchFaults('pattern.gauge.stitches', pattern.gauge.stitches, pattern.gauge.overMm),
        ...(pattern.gauge.rows === undefined
          ? []
          : pitchFaults('pattern.gauge.rows', pattern.gauge.rows, pattern.gauge.overMm)),
      ]),
  ...pattern.measurements.flatMap((row, at) =>
    countDoubts(row, `pattern.measurements[${at}]`, pattern),
  ),
];

/** One doubt for a row, at the first size that raises it: a slip usually runs through all of them. */
const countDoubts = (row: PatternMeasurement, path: string, pattern: Pattern): Fault[] =>
  (row.counts ?? [])
    .flatMap((count, size) => {
      const value = row.values[size];
      if (count === null || value == null) return [];
      const field = `${path}.counts[${size}]`;
      const impossible = pitchFaults(field, count, value);
      return impossible.length > 0 ? impossible : againstGauge(field, row, pattern, count, value);
    })
    .slice(0, 1);

const againstGauge = (
  field: string,
  row: PatternMeasurement,
  pattern: Pattern,
  count: number,
  value: number,
): Fault[] => {
  const atGauge = lengthAtGauge(row, pattern, count);
  if (atGauge === null) return [];
  const ratio = Math.max(atGauge / value, value / atGauge);
  if (ratio <= GAUGE_SLACK) return [];
  return [
    fault(
      'doubt-count',
      field,
      count,
      `${count} at the pattern's gauge make ${lengthText(atGauge)}, but the pattern says ${lengthText(value)}`,
      'Check both for a misprint, and whether one is flat and the other around.',
    ),
  ];
};

/** What a count comes to at the pattern's gauge; null without one in that direction, or for a row in a stitch of its own. */
const lengthAtGauge = (
  row: PatternMeasurement,
  { gauge }: Pattern,
  count: number,
): number | null => {
  if (gauge === undefined || row.stitch !== undefined) return null;
  const direction = directionOf(row);
  if (direction === null) return null;
  const counted = direction === 'width' ? gauge.stitches : gauge.rows;
  return counted === undefined ? null : (count * gauge.overMm) / counted;
};
