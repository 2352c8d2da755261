import type { GarmentRecord } from '@dryflat/record';
import { CURRENT_VERSION } from '@dryflat/record/version';
import * as Y from 'yjs';
import { type JsonObject, shareStructure } from './json.ts';
import { editMap } from './mirror.ts';

/** Origin of edits made here: the only ones that undo takes back. */
const HERE = 'here';

export interface GarmentSnapshot {
  /** Null while the document holds no record: it was never made, or was deleted for good. */
  readonly record: GarmentRecord | null;
  /** True for a record of a version that this app does not know: shown, never changed. */
  readonly readOnly: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Typed text that could not be used yet, by field path. */
  readonly drafts: Readonly<Record<string, string>>;
}

export interface GarmentStore {
  readonly subscribe: (listener: () => void) => () => void;
  readonly snapshot: () => GarmentSnapshot;
  /**
   * Hands `recipe` a copy of the record to change; the differences become one edit, one step of
   * undo together with those of the last half second; `apart` from all others. Does nothing to a
   * read-only record.
   */
  readonly change: (recipe: (draft: GarmentRecord) => void, apart?: 'apart') => void;
  /**
   * Writes the first record into an empty document, or a migrated one; not a step of undo.
   * `original`: the file of a newer version that `record` shows in part. It is kept byte for byte,
   * and the record is read-only as long as it is.
   */
  readonly put: (record: GarmentRecord, original?: string) => void;
  /** The file of a newer version behind a read-only record, or null. */
  readonly original: () => string | null;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly setDraft: (path: string, text: string | null) => void;
  readonly destroy: () => void;
}

/** The record of one garment over its shared document. */
export const garmentStore = (doc: Y.Doc): GarmentStore => {
  const root = doc.getMap('record');
  const drafts = doc.getMap('drafts');
  const file = doc.getMap('file');
  const steps = new Y.UndoManager(root, { trackedOrigins: new Set([HERE]), captureTimeout: 500 });
  const listeners = new Set<() => void>();
  let current = read({ root, drafts, file, steps }, null);

  const refresh = (): void => {
    current = read({ root, drafts, file, steps }, current);
    for (const listener of listeners) listener();
  };
  const write = (after: GarmentRecord, origin: string): void =>
    doc.transact(
      () => editMap(root, root.toJSON() as JsonObject, after as unknown as JsonObject),
      origin,
    );
  doc.on('afterAllTransactions', refresh);
  for (const event of ['stack-item-added', 'stack-item-popped', 'stack-cleared'] as const)
    steps.on(event, refresh);

  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    snapshot: () => current,
    change: (recipe, apart) => {
      if (current.record === null || current.readOnly) return;
      const draft = structuredClone(current.record);
      recipe(draft);
      if (apart) steps.stopCapturing();
      write(draft, HERE);
      if (apart) steps.stopCapturing();
    },
    put: (record, original) =>
      doc.transact(() => {
        write(record, 'put');
        if (original === undefined) file.delete('newer');
        else file.set('newer', original);
      }, 'put'),
    original: () => textOf(file.get('newer')),
    undo: () => void steps.undo(),
    redo: () => void steps.redo(),
    setDraft: (path, text) => {
      if (text === (drafts.get(path) ?? null)) return;
      if (text === null) drafts.delete(path);
      else drafts.set(path, text);
    },
    destroy: () => {
      doc.off('afterAllTransactions', refresh);
      steps.destroy();
      listeners.clear();
    },
  };
};

interface Parts {
  readonly root: Y.Map<unknown>;
  readonly drafts: Y.Map<unknown>;
  readonly file: Y.Map<unknown>;
  readonly steps: Y.UndoManager;
}

const read = (
  { root, drafts, file, steps }: Parts,
  previous: GarmentSnapshot | null,
): GarmentSnapshot => {
  const record = root.size === 0 ? null : (root.toJSON() as unknown as GarmentRecord);
  const version: number = record?.version ?? CURRENT_VERSION;
  return shareStructure(previous, {
    record,
    readOnly: version > CURRENT_VERSION || textOf(file.get('newer')) !== null,
    canUndo: steps.canUndo(),
    canRedo: steps.canRedo(),
    drafts: Object.fromEntries(
      [...drafts.entries()].filter((each): each is [string, string] => textOf(each[1]) !== null),
    ),
  });
};

const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);
