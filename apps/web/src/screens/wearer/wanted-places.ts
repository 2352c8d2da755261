import { findLandmark, type GarmentKind, LANDMARKS_OF } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';

/** What people judge a garment by first. Common practice, no source. */
const FIRST = new Set([
  'chest',
  'body-length',
  'sleeve-length',
  'brim',
  'foot',
  'foot-length',
  'hand',
  'hand-length',
  'span',
  'depth',
  'width',
  'length',
]);

export interface WantedPlaces {
  /** Asked for, or asked about first. */
  readonly shown: readonly string[];
  /** Can be added. */
  readonly others: readonly string[];
}

/** Landmarks whose fit is asked about: those wished for already, and the few that matter most. */
export const wantedPlaces = ({ kind, wearer, pattern }: GarmentRecord): WantedPlaces => {
  const wished = wearer.wanted.map(({ landmark }) => landmark);
  const own = pattern.measurements.flatMap(({ landmark }) =>
    findLandmark(landmark) === null ? [landmark] : [],
  );
  const all = [...new Set([...LANDMARKS_OF[kind as GarmentKind], ...wished, ...own])];
  const shown = all.filter((id) => FIRST.has(id) || wished.includes(id));
  return { shown, others: all.filter((id) => !shown.includes(id)) };
};

/** The body's measurement that a landmark is compared with; a made-up landmark has its own. */
export const bodyIdAt = (landmark: string): string | null => {
  const known = findLandmark(landmark);
  return known === null ? landmark : known.body;
};

/** The body under a landmark, in millimetres; null where it was not given. */
export const bodyMmAt = ({ wearer }: GarmentRecord, landmark: string): number | null => {
  const id = bodyIdAt(landmark);
  return wearer.body.find((each) => each.landmark === id)?.mm ?? null;
};

/** The pattern's value at a landmark in the size being knit; null where it has none. */
export const patternMmAt = ({ pattern }: GarmentRecord, landmark: string): number | null => {
  const row = pattern.measurements.find((each) => each.landmark === landmark);
  const at = pattern.chosen === undefined ? 0 : pattern.sizes.indexOf(pattern.chosen);
  return row?.values[at] ?? null;
};
