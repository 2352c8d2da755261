import type { Fault, Result } from '@dryflat/engine/units';
import { duplicateRecord, emptyRecord, type GarmentRecord, goingOut } from '@dryflat/record';
import { documentOf, eraseGarment, garmentIds, openGarment, openShelf } from './device.ts';
import { halfTyped } from './half-typed.ts';
import { askToPersist, healthOf } from './health.ts';
import { newId } from './ids.ts';
import type { ShelfEntry } from './shelf-store.ts';
import { isBytes } from './updates.ts';

/** Schemas are only needed by some actions, so they are loaded when one is taken. */
const recordFiles = () => import('./record-files.ts');

const entryOf = (record: GarmentRecord, since: string): ShelfEntry => ({
  id: record.id,
  name: record.name,
  kind: record.kind,
  wearer: record.wearer?.name ?? '',
  since,
});

/** A damaged record may have anything for a name. */
const nameOf = ({ name }: { readonly name: unknown }): string =>
  typeof name === 'string' ? name : '';

/** Puts a record on the shelf under its own id, which must be free. Gives the id. */
export const shelve = async (record: GarmentRecord, original?: string): Promise<string> => {
  const store = await openGarment(record.id);
  store.put(record, original);
  (await openShelf()).put(entryOf(record, new Date().toISOString()));
  void askToPersist();
  return record.id;
};

export const createGarment = (name: string, kind: GarmentRecord['kind']): Promise<string> => {
  return shelve(emptyRecord({ id: newId(), name, kind }));
};

/** Puts a copy of a record on the shelf, with an id of its own. */
export const shelveCopy = (
  record: GarmentRecord,
  name: string,
  original?: string,
): Promise<string> => shelve(duplicateRecord(record, { id: newId(), name }), original);

export const duplicateGarment = async (id: string): Promise<string | null> => {
  const store = await openGarment(id);
  const { record } = store.snapshot();
  if (record === null) return null;
  return shelveCopy(record, `${record.name} (copy)`, store.original() ?? undefined);
};

/** Renaming is a change of the record like any other, and can be undone there. */
export const renameGarment = async (id: string, name: string): Promise<void> => {
  const store = await openGarment(id);
  store.change((draft) => {
    draft.name = name;
  });
  await noteOnShelf(id);
};

/** Brings the shelf's entry in line with the record. */
export const noteOnShelf = async (id: string): Promise<void> => {
  const shelf = await openShelf();
  const entry = shelf.entries().find((each) => each.id === id);
  const { record } = (await openGarment(id)).snapshot();
  if (entry && record) shelf.put({ ...entry, ...entryOf(record, entry.since) });
};

/** Puts garments back that the shelf does not list any more: their lines were in what cannot be read. */
export const shelveStrays = async (): Promise<void> => {
  const shelf = await openShelf();
  if (healthOf(documentOf(null)).aside.length === 0) return;
  const listed = new Set(shelf.entries().map(({ id }) => id));
  for (const id of await garmentIds()) {
    const { record } = (await openGarment(id)).snapshot();
    if (record && !listed.has(id)) shelf.put(entryOf(record, new Date().toISOString()));
  }
};

/** Garments of this device that can be read, though their shelf may not. */
export const readableGarments = async (): Promise<
  readonly { readonly id: string; readonly name: string }[]
> => {
  const ids = await garmentIds();
  const all = await Promise.all(
    ids.map(async (id) => ({ id, record: (await openGarment(id)).snapshot().record })),
  );
  return all.flatMap(({ id, record }) => (record === null ? [] : [{ id, name: nameOf(record) }]));
};

export interface CameIn {
  readonly id: string;
  readonly readOnly: boolean;
  /** What she should know of it, one sentence each. */
  readonly notices: readonly string[];
}

export type Imported = Result<CameIn>;

/**
 * Reads an exported file. A record whose id is taken comes in as a second garment, never over the
 * first; one of a newer version keeps every field and is read-only.
 */
export const importGarment = async (text: string): Promise<Imported> => {
  const { readRecord } = await recordFiles();
  const read = readRecord(text);
  if (!read.ok) return read;
  const { record, readOnly, notices } = read.value;
  const taken = (await openShelf()).entries().some((each) => each.id === record.id);
  const id = await shelve(taken ? { ...record, id: newId() } : record, readOnly ? text : undefined);
  return { ok: true, value: { id, readOnly, notices } };
};

/** What is wrong with a garment's record as it lies on this device, by the rules for files. */
export const recordFaults = async (id: string): Promise<readonly Fault[]> => {
  const { readRecord } = await recordFiles();
  const { record } = (await openGarment(id)).snapshot();
  const read = readRecord(JSON.stringify(record));
  return read.ok ? [] : read.faults;
};

export interface GarmentFile {
  /** Names nobody, unless the report does. */
  readonly fileName: string;
  readonly text: string;
  /** Texts that are not in it, for they are half typed. */
  readonly halfTyped: readonly string[];
  /** Pictures that are not in it, for they could not be looked through. */
  readonly picturesLeftOut: number;
}

/** The record as a file: of a newer version byte for byte as it came, its pictures clean in any case. */
export const exportGarment = async (id: string): Promise<GarmentFile | null> => {
  const { cleanFile, writeRecord } = await recordFiles();
  const store = await openGarment(id);
  const { record, drafts } = store.snapshot();
  if (record === null) return null;
  const { text, leftOut } = cleanFile(store.original() ?? writeRecord(record));
  const fileName = `${fileNameOf(record)}.json`;
  return { fileName, text, halfTyped: halfTyped(drafts), picturesLeftOut: leftOut };
};

/** What was set aside of a garment, or of the shelf, as a file: bytes in base64, anything else as it reads. */
export const exportAside = (
  garment: string | null,
): { readonly fileName: string; readonly text: string } => {
  const of = documentOf(garment);
  const entries = healthOf(of).aside.map(({ key, value }) => ({
    number: key,
    ...(isBytes(value) ? { base64: base64Of(value) } : { value: plain(value) }),
  }));
  const text = `${JSON.stringify({ format: 'dryflat-set-aside', of, entries }, null, 2)}\n`;
  return { fileName: `${of}-set-aside.json`, text };
};

const base64Of = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));

/** Not everything that a database can hold goes into a file of JSON; null for what the browser cannot read. */
const plain = (value: unknown): unknown => {
  try {
    return JSON.parse(JSON.stringify(value ?? null));
  } catch {
    return String(value);
  }
};

/** A record that was damaged on this device may lack any part, and goes out all the same. */
const fileNameOf = (record: GarmentRecord): string => {
  try {
    return goingOut(record).fileName;
  } catch {
    return 'garment';
  }
};

const setTrashed = async (id: string, trashed: string | null): Promise<void> => {
  const shelf = await openShelf();
  const entry = shelf.entries().find((each) => each.id === id);
  if (!entry) return;
  const { trashed: _was, ...rest } = entry;
  shelf.put(trashed === null ? rest : { ...rest, trashed });
};

export const trashGarment = (id: string): Promise<void> => setTrashed(id, new Date().toISOString());

export const restoreGarment = (id: string): Promise<void> => setTrashed(id, null);

/** Deletes for good what lies in the trash; nothing brings it back. Rejects where a garment is still there. */
export const emptyTrash = async (): Promise<void> => {
  const shelf = await openShelf();
  for (const { id, trashed } of shelf.entries()) {
    if (trashed === undefined) continue;
    await eraseGarment(id);
    shelf.remove(id);
  }
};
