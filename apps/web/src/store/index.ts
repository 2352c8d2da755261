export { eraseDevice, openShelf } from './device.ts';
export { noteDevice, useDeviceNote } from './device-note.ts';
export {
  type Garment,
  GarmentProvider,
  useDrafts,
  useDraftText,
  useGarment,
} from './garment-context.tsx';
export { newId } from './ids.ts';
export * from './shelf-actions.ts';
export type { ShelfEntry } from './shelf-store.ts';
export { type Keeping, setKeeping } from './storage.ts';
export { useKeeping, useShelf, useShelfEntries } from './use-shelf.ts';
export { type Theme, type Units, useView, type View, type Words } from './view.ts';
