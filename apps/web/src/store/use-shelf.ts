import { use, useSyncExternalStore } from 'react';
import { type OpenShelf, openShelf } from './device.ts';
import type { ShelfEntry } from './shelf-store.ts';
import { type Keeping, keepingNow, onKeeping } from './storage.ts';

/** The shelf; suspends the first time, while it is read from the device. */
export const useShelf = (): OpenShelf => use(openShelf());

/** Every garment of this device, newest first, those in the trash included. */
export const useShelfEntries = (): readonly ShelfEntry[] => {
  const shelf = useShelf();
  return useSyncExternalStore(shelf.subscribe, shelf.entries);
};

export const useKeeping = (): Keeping => useSyncExternalStore(onKeeping, keepingNow);
