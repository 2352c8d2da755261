import { databaseFactory, databaseSource } from './factory.ts';
import type { Entry } from './updates.ts';
import type { Outcome } from './writer.ts';

/** Updates of a document under rising numbers; laid out as y-indexeddb did, whose databases these may be. */
const UPDATES = 'updates';

/**
 * Every write is on the disk itself before it is acknowledged, not only on its way there: an empty battery
 * takes back nothing that was said to be kept. Costs a fifth of a millisecond more where it was measured.
 */
const DURABLE = { durability: 'strict' } as const;

/** Milliseconds that a database has to answer: far more than it takes, less than it takes to give up. */
export const PATIENCE = 3_500;

/** How browsers say that they keep nothing here at all, as in some private windows. */
const KEEPS_NOTHING = new Set(['SecurityError', 'InvalidStateError']);

/**
 * Opens the database of that name, empty if there is none yet; null where the browser keeps none at all.
 * Rejects with the browser's own error; may never answer.
 */
export const openDatabase = (name: string): Promise<IDBDatabase | null> =>
  new Promise((resolve, reject) => {
    const source = attempt(databaseSource);
    const request = attempt(() => source?.factory.open(name) ?? null);
    if (source === null || request === null) {
      resolve(null);
      return;
    }
    request.onupgradeneeded = () => {
      request.result.createObjectStore(UPDATES, { autoIncrement: true });
      // Not used, but an earlier version of the app in another tab counts on it.
      request.result.createObjectStore('custom');
    };
    request.onsuccess = () => {
      source.opened();
      resolve(request.result);
    };
    request.onerror = () => {
      source.refused();
      if (KEEPS_NOTHING.has(request.error?.name ?? '')) resolve(null);
      else reject(request.error);
    };
  });

/** Null where the browser throws at the question. */
const attempt = <T>(ask: () => T): T | null => {
  try {
    return ask();
  } catch {
    return null;
  }
};

/** Deletes it for good, once other tabs have let go of it. Rejects where that fails or takes too long. */
export const deleteDatabase = (name: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const request = attempt(() => databaseFactory().deleteDatabase(name));
    if (request === null) {
      // Where no databases are kept there is none to delete.
      resolve();
      return;
    }
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
    setTimeout(reject, PATIENCE, new Error(`${name} was not deleted in time`));
  });

/** Names of all databases of this app; empty where the browser does not tell, or not in time. */
export const databaseNames = async (): Promise<readonly string[]> => {
  try {
    const late = new Promise<[]>((resolve) => setTimeout(resolve, PATIENCE, []));
    const all = await Promise.race([databaseFactory().databases(), late]);
    return all.flatMap(({ name }) => (name?.startsWith('dryflat-') ? [name] : []));
  } catch {
    return [];
  }
};

/**
 * What a database answers; rejects where the browser closes it meanwhile. Chromium does so on a full disk, and
 * then answers nothing more of what was under way.
 */
const unlessClosed = <T>(db: IDBDatabase, answered: Promise<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    const closed = (): void => reject(new Error(`${db.name} was closed by the browser`));
    db.addEventListener('close', closed);
    const settled = (): void => db.removeEventListener('close', closed);
    answered.then(resolve, reject).then(settled, settled);
  });

/** All entries, oldest first. One that the browser itself cannot read has the value undefined. */
export const readEntries = (db: IDBDatabase): Promise<readonly Entry[]> =>
  unlessClosed(db, entriesOf(db));

const entriesOf = async (db: IDBDatabase): Promise<readonly Entry[]> => {
  const store = db.transaction(UPDATES).objectStore(UPDATES);
  const [keys, values] = await Promise.all([
    answer(store.getAllKeys()),
    answer(store.getAll()).catch(() => null),
  ]);
  if (values !== null) return keys.map((key, i) => ({ key, value: values[i] }));
  const oneByOne = db.transaction(UPDATES).objectStore(UPDATES);
  return Promise.all(
    keys.map(async (key) => ({
      key,
      value: await answer(oneByOne.get(key)).catch(() => undefined),
    })),
  );
};

const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      // The others of the transaction go on.
      event.preventDefault();
      reject(request.error);
    };
  });

/**
 * Writes one more update. Committed as it is sent: a transaction left to itself takes a round trip to the
 * page, and a tab closed in between would abort it with the last keystrokes inside.
 */
export const append = (db: IDBDatabase, update: Uint8Array): Promise<Outcome> =>
  outcomeOf(db, (store, transaction) => {
    store.add(update);
    transaction.commit();
  });

/** Removes entries for good. */
export const removeEntries = (db: IDBDatabase, keys: readonly IDBValidKey[]): Promise<Outcome> =>
  outcomeOf(db, (store, transaction) => {
    for (const key of keys) store.delete(key);
    transaction.commit();
  });

/** Puts one update in the place of others, as one step: all of it or nothing. */
export const replaceEntries = (
  db: IDBDatabase,
  replacement: (entries: readonly Entry[]) => {
    readonly update: Uint8Array;
    readonly replaced: readonly IDBValidKey[];
  },
): Promise<Outcome> =>
  outcomeOf(db, (store, transaction) => {
    const keys = store.getAllKeys();
    const values = store.getAll();
    values.onsuccess = () => {
      const { update, replaced } = replacement(
        keys.result.map((key, i) => ({ key, value: values.result[i] })),
      );
      store.add(update);
      for (const key of replaced) store.delete(key);
      transaction.commit();
    };
  });

const outcomeOf = (
  db: IDBDatabase,
  act: (store: IDBObjectStore, transaction: IDBTransaction) => void,
): Promise<Outcome> => {
  const ended = new Promise<Outcome>((resolve) => {
    const transaction = db.transaction(UPDATES, 'readwrite', DURABLE);
    transaction.oncomplete = () => resolve('written');
    transaction.onabort = () => resolve(isNoSpace(transaction.error) ? 'full' : 'failed');
    act(transaction.objectStore(UPDATES), transaction);
  });
  return unlessClosed(db, ended);
};

/** A quota says so by its name; Chromium on a full disk only in its words. */
const isNoSpace = (error: DOMException | null): boolean =>
  error?.name === 'QuotaExceededError' || /NO_SPACE/.test(error?.message ?? '');
