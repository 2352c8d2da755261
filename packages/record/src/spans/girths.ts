import type { Direction } from '@dryflat/engine/fabric';
import { findLandmark } from '@dryflat/engine/garment';
import type { GarmentRecord, PatternMeasurement } from '../schema/index.ts';

export type Span = 'flat' | 'around';

/** Along which direction a measurement runs: its landmark's, else its own; null while nobody said. */
export const directionOf = (measurement: PatternMeasurement): Direction | null =>
  findLandmark(measurement.landmark)?.direction ?? measurement.direction ?? null;

/**
 * Whether a number here may be meant flat or around, so that the knitter has to say which: girths
 * of known landmarks, and every width at a landmark that she made up. Lengths and widths across one
 * layer (neck, cross back, shawls) have no such doubt.
 */
export const mayGoAround = (measurement: PatternMeasurement): boolean => {
  const landmark = findLandmark(measurement.landmark);
  return landmark === null ? measurement.direction === 'width' : landmark.girth;
};

/**
 * Whether nobody has said yet if a row's numbers are flat or around: half or twice as much may be meant,
 * so that nothing is worked out from them.
 */
export const awaitsSpan = (measurement: PatternMeasurement): boolean =>
  mayGoAround(measurement) &&
  measurement.span === undefined &&
  measurement.values.some((value) => value !== null);

/** The pattern's measurement of an id, or undefined. */
export const measurementOf = (record: GarmentRecord, id: string): PatternMeasurement | undefined =>
  record.pattern.measurements.find((each) => each.id === id);

/** The first measurement of the pattern at a landmark, or undefined. */
export const measurementAt = (
  record: GarmentRecord,
  landmark: string,
): PatternMeasurement | undefined =>
  record.pattern.measurements.find((each) => each.landmark === landmark);

/** Whether a wanted finished range at a landmark may go around: told by the landmark, else by the pattern. */
export const landmarkMayGoAround = (record: GarmentRecord, landmark: string): boolean => {
  const known = findLandmark(landmark);
  const own = measurementAt(record, landmark);
  return known?.girth ?? (own === undefined ? false : mayGoAround(own));
};

/** A girth in millimetres all the way around: a flat width counts twice, a girth once. */
export const girthMm = (valueMm: number, span: Span): number =>
  span === 'flat' ? valueMm * 2 : valueMm;

/**
 * What a measurement's numbers mean for the engine: `around` for girths of known landmarks, however
 * the pattern prints them; what the knitter said for a width of her own, which may be a pocket; `flat`
 * for all the rest.
 */
export const engineSpan = (measurement: PatternMeasurement): Span => {
  if (!mayGoAround(measurement)) return 'flat';
  return findLandmark(measurement.landmark) === null ? (measurement.span ?? 'flat') : 'around';
};

/** What a number given in `span` is multiplied by to be in the engine's span of its measurement. */
export const timesToEngine = (measurement: PatternMeasurement, span: Span | undefined): number => {
  const wanted = engineSpan(measurement);
  if (!mayGoAround(measurement) || span === undefined || span === wanted) return 1;
  return wanted === 'around' ? 2 : 0.5;
};
