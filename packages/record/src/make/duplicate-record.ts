import type { GarmentRecord } from '../schema/garment.ts';

/**
 * A copy that shares nothing with its original and has an id and a name of its own. Ids inside a
 * record count only within it, so they stay, and every reference with them.
 */
export const duplicateRecord = (
  record: GarmentRecord,
  as: { id: string; name: string },
): GarmentRecord => ({ ...structuredClone(record), id: as.id, name: as.name });
