import { useCallback, useSyncExternalStore } from 'react';

/** Choices that belong to a device and not to a garment: how steps are heard, which piece was open. */
const PREFIX = 'dryflat-note/';
const listeners = new Set<() => void>();
/** Here for this visit where the browser keeps nothing. */
const unkept = new Map<string, string>();

const read = (key: string): string | null => {
  try {
    return localStorage.getItem(PREFIX + key) ?? unkept.get(key) ?? null;
  } catch {
    return unkept.get(key) ?? null;
  }
};

/** Keeps a note on this device. */
export const noteDevice = (key: string, text: string): void => {
  unkept.set(key, text);
  try {
    localStorage.setItem(PREFIX + key, text);
  } catch {
    // Full or forbidden: it holds for this visit.
  }
  for (const listener of listeners) listener();
};

/** Removes all notes. */
export const forgetNotes = (): void => {
  unkept.clear();
  for (const key of Object.keys(localStorage))
    if (key.startsWith(PREFIX)) localStorage.removeItem(key);
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** A note of this device, null where there is none, and the way to change it. */
export const useDeviceNote = (key: string): [string | null, (text: string) => void] => {
  const text = useSyncExternalStore(subscribe, () => read(key));
  const set = useCallback((next: string) => noteDevice(key, next), [key]);
  return [text, set];
};
