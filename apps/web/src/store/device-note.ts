import { useCallback, useSyncExternalStore } from 'react';
import { localKeys, readLocal, removeLocal, writeLocal } from './local.ts';

/** Choices that belong to a device and not to a garment: how steps are heard, which piece was open. */
const PREFIX = 'dryflat-note/';
const listeners = new Set<() => void>();

/** Keeps a note on this device; for this visit only where the browser keeps nothing. */
export const noteDevice = (key: string, text: string): void => {
  writeLocal(PREFIX + key, text);
  for (const listener of listeners) listener();
};

/** Removes all notes. */
export const forgetNotes = (): void => {
  for (const key of localKeys()) if (key.startsWith(PREFIX)) removeLocal(key);
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** A note of this device, null where there is none, and the way to change it. */
export const useDeviceNote = (key: string): [string | null, (text: string) => void] => {
  const text = useSyncExternalStore(subscribe, () => readLocal(PREFIX + key));
  const set = useCallback((next: string) => noteDevice(key, next), [key]);
  return [text, set];
};
