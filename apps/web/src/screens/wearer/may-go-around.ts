import { findLandmark } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';

/** Whether a number at a landmark may be meant flat or around: a girth, or a width of one's own. */
export const mayGoAroundAt = ({ pattern }: GarmentRecord, landmark: string): boolean => {
  const known = findLandmark(landmark);
  const own = pattern.measurements.find((each) => each.landmark === landmark);
  return known?.girth ?? own?.direction === 'width';
};
