import { useSyncExternalStore } from 'react';

/** A desk: wide enough, in letters and not in pixels, for a table with all sizes side by side. */
const wide = matchMedia('(min-width: 60rem)');

const subscribe = (listener: () => void): (() => void) => {
  // Older browsers cannot be asked to tell of a change.
  wide.addEventListener?.('change', listener);
  return () => wide.removeEventListener?.('change', listener);
};

export const useWide = (): boolean => useSyncExternalStore(subscribe, () => wide.matches);
