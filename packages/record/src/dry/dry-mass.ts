import type { DryWeighing } from '@dryflat/engine/drying';
import { grams } from '@dryflat/engine/units';
import type { Drying, GarmentRecord } from '../schema/index.ts';
import { gramsOf } from '../text/grams.ts';

/** Grams of all balls by their labels, less what is left over; null where a lot does not say. */
const labelGrams = ({ yarns, left = [] }: GarmentRecord): number | null => {
  const bought = yarns.map(gramsOf);
  if (bought.length === 0 || bought.includes(null)) return null;
  const over = left.reduce((sum, { massG }) => sum + massG, 0);
  const used = bought.reduce<number>((sum, each) => sum + (each ?? 0), 0) - over;
  return used > 0 ? used : null;
};

/**
 * Mass before the wash, from the best that the record has: weighed for this drying, else the mass of
 * the garment, taken as weighed in this room, else the balls by their labels. Null without any.
 */
export const dryMassOf = (record: GarmentRecord, drying: Drying): DryWeighing | null => {
  if (drying.dry !== undefined) return { mass: grams(drying.dry.massG), air: drying.dry.air };
  if (record.massG !== undefined) return { mass: grams(record.massG), air: 'here' };
  const sum = labelGrams(record);
  return sum === null ? null : { mass: grams(sum), air: 'label' };
};
