import { findLandmark } from '@dryflat/engine/garment';
import type { GarmentRecord, WantedFit } from '@dryflat/record';
import { bodyMmAt, patternMmAt } from './wanted-places.ts';

/** Until something was wished: from no ease to 5 cm. Ours, no source. */
const FIRST_EASE = { minMm: 0, maxMm: 50 };
/** One's own range stands this much wider than the ready one that it starts from, to be told apart. */
const WIDER = 5;

/** One's own ease starts from the range that was wished before. */
export const firstOwnEase = (
  wish: WantedFit | undefined,
): { readonly minMm: number; readonly maxMm: number } =>
  wish?.kind === 'ease' ? { minMm: wish.minMm - WIDER, maxMm: wish.maxMm + WIDER } : FIRST_EASE;

/** Half of the room around a size that is asked for first, as a share of it. Ours, no source. */
const ROOM = 0.03;
/** Where nothing is known: an arm's length. Ours, no source. */
const NOTHING_KNOWN = 500;

/** A finished range to begin with: around what the pattern says, else around the body. */
export const firstFinished = (record: GarmentRecord, landmark: string): WantedFit => {
  const row = record.pattern.measurements.find((each) => each.landmark === landmark);
  const from = patternMmAt(record, landmark) ?? bodyMmAt(record, landmark) ?? NOTHING_KNOWN;
  const span = spanOfStart(record, landmark, row?.span);
  return {
    kind: 'finished',
    landmark,
    minMm: Math.round(from * (1 - ROOM)),
    maxMm: Math.round(from * (1 + ROOM)),
    ...(span && { span }),
  };
};

/** What was copied keeps its meaning; a body's girth is around. */
const spanOfStart = (
  record: GarmentRecord,
  landmark: string,
  rowSpan: 'flat' | 'around' | undefined,
): 'flat' | 'around' | undefined => {
  if (patternMmAt(record, landmark) !== null) return rowSpan;
  const girth = findLandmark(landmark)?.girth ?? false;
  return girth && bodyMmAt(record, landmark) !== null ? 'around' : undefined;
};
