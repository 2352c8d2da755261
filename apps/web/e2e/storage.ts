import type { Page } from 'playwright-core';

/** What the page says about how what was typed is kept. */
export const keeping = (page: Page): Promise<string | null> =>
  page.locator('.df-keeping').first().textContent();

/** Waits until the page says that everything typed so far is kept. */
export const untilKept = (page: Page): Promise<void> =>
  page
    .locator('.df-keeping', { hasText: /^Kept on this device/ })
    .first()
    .waitFor();

/** Writes that `failWrites` lets fail from now on: to databases whose name begins so, and how. */
export interface Failing {
  readonly to: string;
  readonly as: 'abort' | 'no-space';
}

/** Prepares a page, before it is opened, for `setFailing`. */
export const failWrites = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const state = window as unknown as { failing: Failing | null };
    state.failing = null;
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...args: Parameters<typeof transaction>) {
      const made = transaction.apply(this, args);
      const { failing } = state;
      if (made.mode !== 'readwrite' || !failing || !this.name.startsWith(failing.to)) return made;
      if (failing.as === 'no-space')
        Object.defineProperty(made, 'error', { value: new DOMException('', 'QuotaExceededError') });
      made.commit = () => made.abort();
      return made;
    };
  });
};

/** From now on writes fail so; with null they work again. */
export const setFailing = (page: Page, failing: Failing | null): Promise<void> =>
  page.evaluate((given) => {
    (window as unknown as { failing: Failing | null }).failing = given;
  }, failing);

/** Puts values into the updates of a database as they are, bytes being marked as such. Makes it where there is none. */
export const putRaw = (
  page: Page,
  database: string,
  values: readonly ({ readonly bytes: readonly number[] } | { readonly value: unknown })[],
): Promise<void> =>
  page.evaluate(
    async ([name, entries]) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onupgradeneeded = () => {
          request.result.createObjectStore('updates', { autoIncrement: true });
          request.result.createObjectStore('custom');
        };
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const transaction = db.transaction('updates', 'readwrite');
      const store = transaction.objectStore('updates');
      for (const each of entries)
        store.add('bytes' in each ? new Uint8Array(each.bytes) : each.value);
      await new Promise((done) => {
        transaction.oncomplete = done;
      });
      db.close();
    },
    [database, values] as const,
  );

/** What never answers: opening a database, reading it, or listing all; each of databases whose name begins so. */
export interface Silence {
  readonly of: string;
  readonly what: 'open' | 'read';
  readonly list: boolean;
}

/** Prepares a page so that storage never answers, until `answer` is called in it. */
export const silence = async (page: Page, silent: Silence): Promise<void> => {
  await page.addInitScript(({ of, what, list }) => {
    const held: (() => void)[] = [];
    const state = window as unknown as { answer: () => void; silent: boolean };
    state.silent = true;
    state.answer = () => {
      state.silent = false;
      for (const each of held.splice(0)) each();
    };
    /** Holds back every event of a request. */
    const hold = <T extends IDBRequest>(request: T): T => {
      for (const type of ['success', 'error'])
        request.addEventListener(type, (event) => {
          if (!state.silent) return;
          event.stopImmediatePropagation();
          held.push(() => request.dispatchEvent(new Event(type)));
        });
      return request;
    };
    const { open, databases } = IDBFactory.prototype;
    IDBFactory.prototype.open = function (name, ...rest) {
      const request = open.call(this, name, ...rest);
      return what === 'open' && name.startsWith(of) ? hold(request) : request;
    };
    if (list) IDBFactory.prototype.databases = () => new Promise(() => {});
    else IDBFactory.prototype.databases = databases;
    const { getAll, getAllKeys } = IDBObjectStore.prototype;
    const isMeant = (store: IDBObjectStore): boolean =>
      what === 'read' && store.transaction.db.name.startsWith(of);
    IDBObjectStore.prototype.getAll = function (...args) {
      const request = getAll.apply(this, args);
      return isMeant(this) ? hold(request) : request;
    };
    IDBObjectStore.prototype.getAllKeys = function (...args) {
      const request = getAllKeys.apply(this, args);
      return isMeant(this) ? hold(request) : request;
    };
  }, silent);
};
