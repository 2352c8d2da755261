import { bringUpToDate } from './bring-up-to-date.ts';
import { databaseNames, deleteDatabase } from './database.ts';
import { forgetNotes } from './device-note.ts';
import { type GarmentStore, garmentStore } from './garment-store.ts';
import { type KeptDoc, keepDoc } from './keep.ts';
import { removeLocal } from './local.ts';
import { type ShelfStore, shelfStore } from './shelf-store.ts';

/** Everything that this device keeps: one shelf, and a document for each garment opened so far. */
const SHELF = 'dryflat-shelf';
const GARMENT = 'dryflat-garment-';

/** Name of the document of a garment, or of the shelf where there is none. */
export const documentOf = (garment: string | null): string =>
  garment === null ? SHELF : GARMENT + garment;

let shelf: { readonly kept: KeptDoc; readonly store: Promise<ShelfStore> } | null = null;

const openShelfDoc = () => {
  if (shelf !== null) return shelf;
  const kept = keepDoc(SHELF);
  shelf = { kept, store: kept.opened.then(() => shelfStore(kept.doc)) };
  return shelf;
};

/** Opens the shelf once; later calls give the same one. Settles in seconds, come what may: see `healthOf`. */
export const openShelf = (): Promise<ShelfStore> => openShelfDoc().store;

interface OpenGarment {
  readonly kept: KeptDoc;
  readonly store: Promise<GarmentStore>;
}
const garments = new Map<string, OpenGarment>();

const open = (id: string): OpenGarment => {
  const known = garments.get(id);
  if (known) return known;
  const kept = keepDoc(documentOf(id));
  const store = kept.opened.then(() => upToDate(garmentStore(kept.doc)));
  // What is read late is brought up to date late.
  void kept.loaded.then(() => store).then(upToDate);
  const opening = { kept, store };
  garments.set(id, opening);
  return opening;
};

const upToDate = async (store: GarmentStore): Promise<GarmentStore> => {
  await bringUpToDate(store).catch((error: unknown) =>
    console.warn('Dryflat: a garment stays as it was:', error),
  );
  return store;
};

/**
 * Opens a garment, or an empty document if there is none of that id; the same promise each time. Settles in
 * seconds, come what may: see `healthOf`.
 */
export const openGarment = (id: string): Promise<GarmentStore> => open(id).store;

/** Ids of all garments that this device has a document of, on the shelf or not. */
export const garmentIds = async (): Promise<readonly string[]> =>
  (await databaseNames()).flatMap((name) =>
    name.startsWith(GARMENT) ? [name.slice(GARMENT.length)] : [],
  );

/** Removes for good what could not be read of a garment, or of the shelf. */
export const dropAside = (garment: string | null): Promise<void> =>
  (garment === null ? openShelfDoc() : open(garment)).kept.dropAside();

/** Removes a garment's document from the device for good. Rejects where it is still there after some seconds. */
export const eraseGarment = async (id: string): Promise<void> => {
  const { kept, store } = open(id);
  garments.delete(id);
  (await store).destroy();
  await kept.erase();
};

/**
 * Removes everything this app ever kept on the device; rejects where something is still there. The page has
 * to be loaded anew after it.
 */
export const eraseDevice = async (): Promise<void> => {
  const onShelf = (await openShelf()).entries().map(({ id }) => documentOf(id));
  await Promise.all([...garments.keys()].map(eraseGarment));
  await openShelfDoc().kept.erase();
  await Promise.all([...new Set([...onShelf, ...(await databaseNames())])].map(deleteDatabase));
  forgetNotes();
  removeLocal('dryflat-view');
  removeLocal('dryflat-unfinished-name');
};
