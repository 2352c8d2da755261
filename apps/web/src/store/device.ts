import { bringUpToDate } from './bring-up-to-date.ts';
import { forgetNotes } from './device-note.ts';
import { type GarmentStore, garmentStore } from './garment-store.ts';
import { type KeptDoc, keepDoc } from './keep.ts';
import { type ShelfStore, shelfStore } from './shelf-store.ts';

/** Everything that this device keeps: one shelf, and a document for each garment opened so far. */
const SHELF = 'dryflat-shelf';
const nameOf = (id: string): string => `dryflat-garment-${id}`;

export interface OpenShelf extends ShelfStore {
  /** False where the browser keeps nothing: see `keepDoc`. */
  readonly kept: boolean;
}

let shelf: Promise<OpenShelf> | null = null;
let shelfDoc: KeptDoc | null = null;

/** Opens the shelf once; later calls give the same one. */
export const openShelf = (): Promise<OpenShelf> => {
  shelf ??= keepDoc(SHELF).then((opened) => {
    shelfDoc = opened;
    return { ...shelfStore(opened.doc), kept: opened.kept };
  });
  return shelf;
};

interface OpenGarment {
  readonly kept: Promise<KeptDoc>;
  readonly store: Promise<GarmentStore>;
}
const garments = new Map<string, OpenGarment>();

const open = (id: string): OpenGarment => {
  const known = garments.get(id);
  if (known) return known;
  const kept = keepDoc(nameOf(id));
  const opening = { kept, store: kept.then(({ doc }) => upToDate(garmentStore(doc))) };
  garments.set(id, opening);
  return opening;
};

const upToDate = async (store: GarmentStore): Promise<GarmentStore> => {
  await bringUpToDate(store);
  return store;
};

/** Opens a garment, or an empty document if there is none of that id; the same promise each time. */
export const openGarment = (id: string): Promise<GarmentStore> => open(id).store;

/** Removes a garment's document from the device for good. */
export const eraseGarment = async (id: string): Promise<void> => {
  const { kept, store } = open(id);
  garments.delete(id);
  (await store).destroy();
  await (await kept).erase();
};

/** Removes everything this app ever kept on the device. The page has to be loaded anew after it. */
export const eraseDevice = async (): Promise<void> => {
  const { entries } = await openShelf();
  for (const { id } of entries()) await eraseGarment(id);
  await shelfDoc?.erase();
  forgetNotes();
  localStorage.removeItem('dryflat-view');
  localStorage.removeItem('dryflat-unfinished-name');
};
