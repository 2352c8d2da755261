import type {
  ForecastQuestion,
  MeasuredOnGarment,
  MeasurementWanted,
} from '@dryflat/engine/garment';
import { mm } from '@dryflat/engine/units';
import type { GarmentRecord, Measured } from '../schema/index.ts';
import { directionOf, engineSpan, measurementOf, timesToEngine } from '../spans/girths.ts';

/**
 * The pattern's rows with girths made `around`. A row given flat doubles its counts with its values,
 * so that a stitch stays as wide as it was.
 */
export const measurementsWanted = (record: GarmentRecord): MeasurementWanted[] =>
  record.pattern.measurements.map((row) => {
    const times = timesToEngine(row, row.span);
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
    {
      id,
      measurement,
      state,
      value: mm(tape.mm * timesToEngine(row, tape.span)),
      span: engineSpan(row),
    },
  ];
};

/** What the plan pins to something else than the pattern says. */
export const pinnedTo = (record: GarmentRecord): ForecastQuestion['pinTo'] =>
  record.plan.pinTo.flatMap((pin) => {
    const row = measurementOf(record, pin.measurement);
    return row === undefined
      ? []
      : [{ measurement: pin.measurement, value: mm(pin.mm * timesToEngine(row, pin.span)) }];
  });
