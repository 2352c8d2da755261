import * as Y from 'yjs';
import { connectionTo } from './connection.ts';
import {
  append,
  deleteDatabase,
  PATIENCE,
  readEntries,
  removeEntries,
  replaceEntries,
} from './database.ts';
import { stateWithoutGaps } from './gaps.ts';
import { forgetHealth, healthOf, noteHealth, noteKeepsNothing } from './health.ts';
import { shareBetweenTabs } from './tabs.ts';
import { type Entry, sift } from './updates.ts';
import { type Outcome, type Writer, writer } from './writer.ts';

/** A document of this device: loaded, written on every edit, shared between tabs. How it fares: `healthOf`. */
export interface KeptDoc {
  readonly doc: Y.Doc;
  /** Settles once it is read, or its database refuses, or has not answered for `PATIENCE`; never rejects. */
  readonly opened: Promise<void>;
  /** Settles once it is read, if that is ever; until then the document holds only what was typed meanwhile. */
  readonly loaded: Promise<void>;
  /** Removes for good what could not be read. */
  readonly dropAside: () => Promise<void>;
  /** Removes it from the device for good. */
  readonly erase: () => Promise<void>;
}

/** So many small updates are merged into one, after so many milliseconds of rest. */
const MANY = 500;
const REST = 1_000;
/** Origin of what was read from the device and need not be written to it. */
const STORED = 'stored';

/** Opens the document of that name, empty if there is none yet. */
export const keepDoc = (name: string): KeptDoc => {
  const doc = new Y.Doc();
  const connection = connectionTo(name, () => writes.distrust());
  /** Entries in the database, as far as this tab knows. */
  let held = 0;
  let tidying: ReturnType<typeof setTimeout> | undefined;
  let erased = false;

  const act = async (what: (db: IDBDatabase) => Promise<Outcome>): Promise<Outcome> => {
    if (connection.isDeleted()) return 'gone';
    try {
      const db = connection.now() ?? (await connection.open());
      return db === null ? 'gone' : await what(db);
    } catch {
      connection.drop();
      return 'failed';
    }
  };
  const write = async (update: Uint8Array): Promise<Outcome> => {
    const outcome = await act((db) => append(db, update));
    if (outcome === 'written') tidy(1);
    return outcome;
  };
  const tidy = (more: number): void => {
    held += more;
    clearTimeout(tidying);
    if (held >= MANY && !erased) tidying = setTimeout(merge, REST);
  };
  const merge = async (): Promise<void> => {
    const outcome = await act((db) =>
      replaceEntries(db, (entries) => {
        const { doc: read, aside } = sift(entries);
        Y.applyUpdate(doc, Y.encodeStateAsUpdate(read), STORED);
        const left = new Set(aside);
        const replaced = entries.filter((entry) => !left.has(entry)).map(({ key }) => key);
        return { update: Y.encodeStateAsUpdate(doc), replaced };
      }),
    );
    if (outcome === 'written') held = 1;
  };
  const writes = writer({
    write,
    whole: () => Y.encodeStateAsUpdate(doc),
    tell: (standing) => noteHealth(name, { standing }),
  });
  const stopListening = listenFor(writes);
  const stopSharing = shareBetweenTabs(name, doc);
  doc.on('update', (update: Uint8Array, origin: unknown) => {
    if (origin !== STORED) writes.add(update);
  });

  const take = (entries: readonly Entry[]): void => {
    const { doc: read, aside } = sift(entries);
    Y.applyUpdate(doc, stateWithoutGaps(read), STORED);
    noteHealth(name, { aside, opening: 'open' });
    tidy(entries.length);
  };
  const load = async (onRefused: () => void): Promise<void> => {
    for (let pause = REST; !erased; pause = Math.min(2 * pause, PATIENCE)) {
      try {
        const db = await connection.open();
        if (db === null) noteKeepsNothing();
        else take(await readEntries(db));
        return;
      } catch (error) {
        console.warn(`Dryflat: ${name} does not open:`, error);
        connection.drop();
        noteHealth(name, { opening: 'refused' });
        onRefused();
        await new Promise((rested) => setTimeout(rested, pause));
      }
    }
  };
  let loaded = Promise.resolve();
  const opened = new Promise<void>((settle) => {
    const limit = setTimeout(() => {
      noteHealth(name, { opening: 'late' });
      settle();
    }, PATIENCE);
    const done = (): void => {
      clearTimeout(limit);
      settle();
    };
    loaded = load(done).then(done);
  });

  return {
    doc,
    opened,
    loaded,
    dropAside: async () => {
      const keys = healthOf(name).aside.map(({ key }) => key);
      const outcome = await act((db) => removeEntries(db, keys));
      if (outcome === 'written') noteHealth(name, { aside: [] });
    },
    erase: async () => {
      erased = true;
      clearTimeout(tidying);
      writes.stop();
      stopListening();
      stopSharing();
      connection.end();
      doc.destroy();
      await deleteDatabase(name);
      forgetHealth(name);
    },
  };
};

const writers = new Set<Writer>();

const flushAll = (): void => {
  for (const each of writers) each.flush();
};
const retryAll = (): void => {
  for (const each of writers) each.retry();
};
const onSight = (): void => (document.visibilityState === 'hidden' ? flushAll() : retryAll());

/** A page that goes out of sight may never come back: what is not acknowledged is written at once. */
const listenFor = (one: Writer): (() => void) => {
  writers.add(one);
  addEventListener('pagehide', flushAll);
  addEventListener('online', retryAll);
  document.addEventListener('visibilitychange', onSight);
  return () => writers.delete(one);
};
