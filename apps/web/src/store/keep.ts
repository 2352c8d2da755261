import { clearDocument, IndexeddbPersistence } from 'y-indexeddb';
import * as Y from 'yjs';
import { shareBetweenTabs } from './tabs.ts';
import { writeAtOnce } from './write-at-once.ts';

/** A document of this device: loaded, written on every edit, shared between tabs. */
export interface KeptDoc {
  readonly doc: Y.Doc;
  /** False where the browser offers no storage: everything is gone when the tab closes. */
  readonly kept: boolean;
  /** Stops writing and frees the document. */
  readonly close: () => Promise<void>;
  /** Removes it from the device for good. */
  readonly erase: () => Promise<void>;
}

/** Opens the document of that name, empty if there is none yet. Never fails: see `kept`. */
export const keepDoc = async (name: string): Promise<KeptDoc> => {
  const doc = new Y.Doc();
  const storage = await openStorage(name, doc);
  const stopSharing = shareBetweenTabs(name, doc);
  const stopWriting = storage === null ? () => {} : writeAtOnce(storage);
  const close = async (): Promise<void> => {
    stopSharing();
    stopWriting();
    await storage?.destroy();
    doc.destroy();
  };
  return {
    doc,
    kept: storage !== null,
    close,
    erase: async () => {
      await close();
      if (storage !== null) await clearDocument(name);
    },
  };
};

const openStorage = async (name: string, doc: Y.Doc): Promise<IndexeddbPersistence | null> => {
  if (!(await storageWorks())) return null;
  const storage = new IndexeddbPersistence(name, doc);
  await storage.whenSynced;
  return storage;
};

let probe: Promise<boolean> | null = null;

/** Asked once: some browsers refuse storage in private windows. */
const storageWorks = (): Promise<boolean> => {
  probe ??= new Promise((resolve) => {
    try {
      const asked = indexedDB.open('dryflat-probe');
      asked.onsuccess = () => {
        asked.result.close();
        resolve(true);
      };
      asked.onerror = () => resolve(false);
    } catch {
      resolve(false);
    }
  });
  return probe;
};
