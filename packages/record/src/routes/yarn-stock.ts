import type { YarnStock } from '@dryflat/engine/fabric';
import type { GarmentRecord } from '../schema/index.ts';

/** What is left over all yarns; null unless every yarn was weighed. */
const leftGrams = ({ yarns, left = [] }: GarmentRecord): number | null => {
  const grams = yarns.map(({ id }) => left.find(({ yarn }) => yarn === id)?.massG);
  return grams.length === 0 || grams.includes(undefined)
    ? null
    : grams.reduce<number>((sum, each) => sum + (each ?? 0), 0);
};

/**
 * All yarns as one stock, as the forecast blends them into one fabric; lots of several yarns carry the
 * yarn's name. Null where neither a lot nor a weighing is known.
 */
export const yarnStock = (record: GarmentRecord): YarnStock | null => {
  const { yarns } = record;
  const lots = yarns.flatMap(({ name, lots }) =>
    lots.map(({ dyeLot, skeins, gramsEach, metresEach }) => ({
      dyeLot: yarns.length > 1 ? `${name} ${dyeLot}`.trim() : dyeLot,
      skeins,
      gramsEach: gramsEach ?? null,
      metresEach: metresEach ?? null,
    })),
  );
  const leftG = leftGrams(record);
  return lots.length === 0 && leftG === null ? null : { lots, leftG };
};
