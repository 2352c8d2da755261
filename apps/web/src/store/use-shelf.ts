import { use, useSyncExternalStore } from 'react';
import { documentOf, openShelf } from './device.ts';
import { healthOf, type Keeping, keepingNow, type Opening, onHealth } from './health.ts';
import type { ShelfEntry, ShelfStore } from './shelf-store.ts';

/** The shelf; suspends the first time, while it is read from the device. */
export const useShelf = (): ShelfStore => use(openShelf());

/** Every garment of this device, newest first, those in the trash included. */
export const useShelfEntries = (): readonly ShelfEntry[] => {
  const shelf = useShelf();
  return useSyncExternalStore(shelf.subscribe, shelf.entries);
};

export const useKeeping = (): Keeping => useSyncExternalStore(onHealth, keepingNow);

/** Whether a garment's document is open, or that of the shelf where there is no garment. */
export const useOpening = (garment: string | null): Opening =>
  useSyncExternalStore(onHealth, () => healthOf(documentOf(garment)).opening);

/** How many entries of it could not be read. */
export const useAside = (garment: string | null): number =>
  useSyncExternalStore(onHealth, () => healthOf(documentOf(garment)).aside.length);
