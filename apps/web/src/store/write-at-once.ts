import { type IndexeddbPersistence, PREFERRED_TRIM_SIZE, storeState } from 'y-indexeddb';
import { setKeeping } from './storage.ts';

/** Milliseconds of rest after which many small updates are merged into one. */
const MERGE_AFTER = 1000;

/**
 * Takes over the writing of updates from the storage library, which leaves a transaction to commit
 * itself: that takes a round trip to the page, and a tab closed in between aborts it with the last
 * keystrokes inside. Here each write is committed as it is sent, and one that finds no space is told.
 * Loading and merging stay with the library. Returns what stops the writing.
 */
export const writeAtOnce = (storage: IndexeddbPersistence): (() => void) => {
  const { doc } = storage;
  let merging: ReturnType<typeof setTimeout> | undefined;
  const write = (update: Uint8Array, origin: unknown): void => {
    if (origin === storage || storage.db === null) return;
    send(storage.db, update);
    storage._dbsize += 1;
    if (storage._dbsize < PREFERRED_TRIM_SIZE) return;
    clearTimeout(merging);
    merging = setTimeout(() => void storeState(storage, false), MERGE_AFTER);
  };
  doc.off('update', storage._storeUpdate);
  doc.on('update', write);
  return () => {
    clearTimeout(merging);
    doc.off('update', write);
  };
};

const send = (db: IDBDatabase, update: Uint8Array): void => {
  const transaction = begin(db);
  if (transaction === null) {
    setKeeping('not-kept');
    return;
  }
  transaction.onabort = () => setKeeping('full');
  transaction.objectStore('updates').add(update);
  transaction.commit();
};

/** Null where the storage was closed under this tab: the document was deleted in another one. */
const begin = (db: IDBDatabase): IDBTransaction | null => {
  try {
    return db.transaction('updates', 'readwrite');
  } catch {
    return null;
  }
};
