import type {
  ForecastQuestion,
  MeasuredOnGarment,
  MeasurementWanted,
} from '@dryflat/engine/garment';
import { mm } from '@dryflat/engine/units';
import { countsKnit } from '../knit/counts-knit.ts';
import type { GarmentRecord, Measured, Outcome, PatternMeasurement } from '../schema/index.ts';
import {
  awaitsSpan,
  directionOf,
  engineSpan,
  mayGoAround,
  timesToEngine,
} from '../spans/girths.ts';

/**
 * The pattern's rows with girths made `around`. A row given flat doubles its counts with its values,
 * so that a stitch stays as wide as it was. One that may be either is left out, with all that hangs on it.
 */
export const measurementsWanted = (record: GarmentRecord): MeasurementWanted[] => {
  const knit = new Map(countsKnit(record).map(({ measurement, ...each }) => [measurement, each]));
  return answered(record).map((row) => {
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
      ...(knit.has(row.id) && { knit: knit.get(row.id) }),
    };
  });
};

const answered = (record: GarmentRecord): PatternMeasurement[] =>
  record.pattern.measurements.filter((row) => !awaitsSpan(row));

/** The row that a number is of; undefined where there is none, or the row or the number may be flat or around. */
const rowOf = (
  record: GarmentRecord,
  { measurement, span }: Pick<Measured, 'measurement' | 'span'>,
): PatternMeasurement | undefined => {
  const row = answered(record).find(({ id }) => id === measurement);
  return row !== undefined && mayGoAround(row) && span === undefined ? undefined : row;
};

/**
 * Everything that was measured on the pieces, in the order of the file, and on the garment since: what was
 * measured at a place in a state again, after more washes or on a later day, is what it is now.
 */
export const measuredOnGarment = (record: GarmentRecord): MeasuredOnGarment[] =>
  [...record.pieces.flatMap(({ measured }) => measured), ...newestTapes(record.outcomes)].flatMap(
    (tape) => tapeOnGarment(record, tape),
  );

/** By washes, then days, then as they stand in the file; a day that nobody gave comes first. */
const byTime = (one: Outcome, other: Outcome): number =>
  one.washes - other.washes || (one.on ?? '').localeCompare(other.on ?? '');

const newestTapes = (outcomes: readonly Outcome[]): Measured[] => {
  const placeOf = ({ measurement, state }: Measured): string => `${state} ${measurement}`;
  const newest = new Map(
    [...outcomes]
      .sort(byTime)
      .flatMap((outcome) => outcome.measured.map((tape) => [placeOf(tape), outcome] as const)),
  );
  return outcomes.flatMap((outcome) =>
    outcome.measured.filter((tape) => newest.get(placeOf(tape)) === outcome),
  );
};

const tapeOnGarment = (record: GarmentRecord, tape: Measured): MeasuredOnGarment[] => {
  const row = rowOf(record, tape);
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
    const row = rowOf(record, pin);
    return row === undefined
      ? []
      : [{ measurement: pin.measurement, value: mm(pin.mm * timesToEngine(row, pin.span)) }];
  });
