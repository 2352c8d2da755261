import * as Y from 'yjs';

/** One entry of a database as it was read. */
export interface Entry {
  readonly key: IDBValidKey;
  readonly value: unknown;
}

export interface Sifted {
  /** A document made of every entry that can be read. */
  readonly doc: Y.Doc;
  /** Entries that are no updates, or that nothing can be made of. */
  readonly aside: readonly Entry[];
}

/** Bytes, though they may come from a frame, which has a class of its own for them. */
export const isBytes = (value: unknown): value is Uint8Array =>
  Object.prototype.toString.call(value) === '[object Uint8Array]';

/** Whether it reads as an update from end to end. What another tab or another version left may be anything. */
export const isUpdate = (value: unknown): value is Uint8Array => {
  if (!isBytes(value)) return false;
  try {
    Y.decodeUpdate(value);
    return true;
  } catch {
    return false;
  }
};

/** Reads what can be read. An update that throws half way leaves a document broken, so that one is made anew without it. */
export const sift = (entries: readonly Entry[]): Sifted => {
  const aside = new Set(entries.filter(({ value }) => !isUpdate(value)));
  for (;;) {
    const doc = new Y.Doc();
    const thrown = entries.find((entry) => !aside.has(entry) && !takes(doc, entry.value));
    if (thrown === undefined) return { doc, aside: entries.filter((entry) => aside.has(entry)) };
    aside.add(thrown);
  }
};

const takes = (doc: Y.Doc, value: unknown): boolean => {
  try {
    Y.applyUpdate(doc, value as Uint8Array);
    return true;
  } catch {
    return false;
  }
};
