import { findLandmark } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';
import { useCallback } from 'react';
import { useGarment, useView } from '../store/index.ts';

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * Name of a place on the garment. One that the knitter made up is called what her pattern's row is
 * called, else by its own id.
 */
export const landmarkName = (
  id: string,
  words: 'us' | 'uk',
  record?: Pick<GarmentRecord, 'pattern'>,
): string => {
  const known = findLandmark(id);
  if (known) return capital(known.name[words]);
  const row = record?.pattern.measurements.find((each) => each.landmark === id);
  return row?.name || capital(id.replaceAll('-', ' '));
};

/** `landmarkName` for the open garment, in the words that are switched on. */
export const useLandmarkName = (): ((id: string) => string) => {
  const { record } = useGarment();
  const { words } = useView();
  return useCallback((id) => landmarkName(id, words, record), [record, words]);
};
