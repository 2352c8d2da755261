import type { GarmentRecord } from '@dryflat/record';
import * as Y from 'yjs';
import { type JsonObject, shareStructure } from './json.ts';
import { editMap } from './mirror.ts';

/** What the shelf shows of a garment without opening it. */
export interface ShelfEntry {
  readonly id: string;
  readonly name: string;
  readonly kind: GarmentRecord['kind'];
  /** Who it is for, as the record says; may be empty. */
  readonly wearer: string;
  /** When it came onto the shelf, ISO time. */
  readonly since: string;
  /** When it went into the trash, ISO time; absent while it is on the shelf. */
  readonly trashed?: string;
}

export interface ShelfStore {
  readonly subscribe: (listener: () => void) => () => void;
  /** Every entry, newest first, trashed ones included. */
  readonly entries: () => readonly ShelfEntry[];
  readonly put: (entry: ShelfEntry) => void;
  readonly remove: (id: string) => void;
  readonly settings: () => JsonObject;
  readonly setSetting: (key: string, value: string) => void;
}

/** The list of garments and the settings, over their shared document. */
export const shelfStore = (doc: Y.Doc): ShelfStore => {
  const garments = doc.getMap('garments');
  const settings = doc.getMap('settings');
  const listeners = new Set<() => void>();
  let entries = readEntries(garments, []);
  let chosen = settings.toJSON() as JsonObject;
  doc.on('afterAllTransactions', () => {
    entries = readEntries(garments, entries);
    chosen = shareStructure(chosen, settings.toJSON() as JsonObject);
    for (const listener of listeners) listener();
  });
  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    entries: () => entries,
    put: (entry) => doc.transact(() => putEntry(garments, entry)),
    remove: (id) => garments.delete(id),
    settings: () => chosen,
    setSetting: (key, value) => void settings.set(key, value),
  };
};

const putEntry = (garments: Y.Map<unknown>, entry: ShelfEntry): void => {
  const wanted = entry as unknown as JsonObject;
  const there = garments.get(entry.id);
  if (there instanceof Y.Map) editMap(there, there.toJSON(), wanted);
  else garments.set(entry.id, new Y.Map(Object.entries(wanted)));
};

const readEntries = (
  garments: Y.Map<unknown>,
  previous: readonly ShelfEntry[],
): readonly ShelfEntry[] =>
  shareStructure(
    previous,
    [...garments.entries()]
      .map(([id, value]) => readEntry(id, value))
      .sort((a, b) => b.since.localeCompare(a.since) || a.id.localeCompare(b.id)),
  );

/** Whatever stands there, a garment of that id may be opened; its own record brings the entry in order then. */
const readEntry = (id: string, value: unknown): ShelfEntry => {
  const kept: JsonObject = value instanceof Y.Map ? value.toJSON() : {};
  const text = (key: string): string => {
    const found = kept[key];
    return typeof found === 'string' ? found : '';
  };
  return {
    id,
    name: text('name'),
    // One that this version does not know is shown by its own name.
    kind: (text('kind') || 'other') as ShelfEntry['kind'],
    wearer: text('wearer'),
    since: text('since'),
    ...(text('trashed') !== '' && { trashed: text('trashed') }),
  };
};
