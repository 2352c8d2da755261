import { CURRENT_VERSION } from '@dryflat/record/version';
import type { GarmentStore } from './garment-store.ts';

/**
 * A record kept by an older version of this app is migrated; one of a version that was too new when
 * it came in is read again, for this version may understand it. What cannot be read stays as it is.
 */
export const bringUpToDate = async (store: GarmentStore): Promise<void> => {
  const { record } = store.snapshot();
  const original = store.original();
  const version: number = record?.version ?? CURRENT_VERSION;
  if (record === null || (version >= CURRENT_VERSION && original === null)) return;
  const { readRecord } = await import('./record-files.ts');
  const read = readRecord(original ?? JSON.stringify(record));
  if (read.ok && !read.value.readOnly) store.put({ ...read.value.record, id: record.id });
};
