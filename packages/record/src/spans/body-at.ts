import { findLandmark } from '@dryflat/engine/garment';
import type { BodyMeasure, GarmentRecord } from '../schema/index.ts';

/** The id of the body measurement that a garment's landmark is compared with; a made-up landmark has its own. */
export const bodyIdOf = (landmark: string): string | null => {
  const known = findLandmark(landmark);
  return known === null ? landmark : known.body;
};

/** The wearer's measurement under a landmark of the garment, or null where none was given. */
export const bodyAt = (record: GarmentRecord, landmark: string): BodyMeasure | null => {
  const id = bodyIdOf(landmark);
  return record.wearer.body.find((each) => each.landmark === id) ?? null;
};
