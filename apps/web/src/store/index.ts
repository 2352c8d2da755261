export { dropAside, eraseDevice, openShelf } from './device.ts';
export { noteDevice, useDeviceNote } from './device-note.ts';
export {
  type Garment,
  GarmentProvider,
  useDrafts,
  useDraftText,
  useGarment,
} from './garment-context.tsx';
export { askWhetherPersists, isAtRisk, type Keeping } from './health.ts';
export { newId } from './ids.ts';
export { readLocal, removeLocal, writeLocal } from './local.ts';
export * from './shelf-actions.ts';
export type { ShelfEntry } from './shelf-store.ts';
export { useAside, useKeeping, useOpening, useShelf, useShelfEntries } from './use-shelf.ts';
export { type Theme, type Units, useView, type View, type Words } from './view.ts';
