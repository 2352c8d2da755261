import type { GarmentRecord, Outcome } from '../schema/index.ts';

const wasMeasuredDry = ({ washes, measured }: Outcome): boolean =>
  washes > 0 || measured.some(({ state }) => /^(dried|worn|rewashed)$/.test(state));

/** Finished, or measured as a garment since its first bath: nothing of it is left to knit. */
export const isWhole = ({ finished, outcomes }: GarmentRecord): boolean =>
  finished !== undefined || outcomes.some(wasMeasuredDry);

/** Washed and dried once: it is whole, or a drying came to its end. */
export const wasDried = (record: GarmentRecord): boolean =>
  isWhole(record) || (record.dryings ?? []).some(({ dried }) => dried !== undefined);
