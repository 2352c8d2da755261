import type {
  ForecastQuestion,
  MeasuredOnGarment,
  MeasurementWanted,
} from '@dryflat/engine/garment';
import { mm } from '@dryflat/engine/units';
import type { GarmentRecord, Measured, PatternMeasurement } from '../schema/index.ts';
import {
  directionOf,
  engineSpan,
  girthMm,
  mayGoAround,
  measurementOf,
  type Span,
} from '../spans/girths.ts';

/**
 * The pattern's rows with girths made `around`. A row given flat doubles its counts with its values,
 * so that a stitch stays as wide as it was.
 */
export const measurementsWanted = (record: GarmentRecord): MeasurementWanted[] =>
  record.pattern.measurements.map((row) => {
    const times = mayGoAround(row) ? girthMm(1, row.span ?? 'around') : 1;
    const scaled = (list: readonly (number | null)[]) =>
      list.map((value) => (value === null ? null : value * times));
    return {
      id: row.id,
      name: row.name,
      landmark: row.landmark,
      direction: directionOf(row) ?? 'width',
      span: engineSpan(row),
      worked: row.worked,
      values: scaled(row.values).map((value) => (value === null ? null : mm(value))),
      counts: scaled(row.counts ?? row.values.map(() => null)),
      stitch: row.stitch ?? record.stitch,
    };
  });

/** A tape's length as the engine wants it: all the way around where the measurement goes around. */
const tapeMm = (row: PatternMeasurement, valueMm: number, span: Span | undefined): number =>
  mayGoAround(row) ? girthMm(valueMm, span ?? 'around') : valueMm;

/** Everything that was measured on the garment or its pieces, in the order of the file. */
export const measuredOnGarment = (record: GarmentRecord): MeasuredOnGarment[] =>
  [...record.pieces, ...record.outcomes]
    .flatMap(({ measured }) => measured)
    .flatMap((tape) => tapeOnGarment(record, tape));

const tapeOnGarment = (record: GarmentRecord, tape: Measured): MeasuredOnGarment[] => {
  const row = measurementOf(record, tape.measurement);
  if (row === undefined) return [];
  const { id, measurement, state } = tape;
  return [
    { id, measurement, state, value: mm(tapeMm(row, tape.mm, tape.span)), span: engineSpan(row) },
  ];
};

/** What the plan pins to something else than the pattern says. */
export const pinnedTo = (record: GarmentRecord): ForecastQuestion['pinTo'] =>
  record.plan.pinTo.flatMap((pin) => {
    const row = measurementOf(record, pin.measurement);
    return row === undefined
      ? []
      : [{ measurement: pin.measurement, value: mm(tapeMm(row, pin.mm, pin.span)) }];
  });
