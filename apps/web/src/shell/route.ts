import { useSyncExternalStore } from 'react';
import { parseHash, type Route } from './hash.ts';

let seen = '';
let route: Route = { at: 'shelf' };

const now = (): Route => {
  if (location.hash !== seen) {
    seen = location.hash;
    route = parseHash(seen);
  }
  return route;
};

const subscribe = (listener: () => void): (() => void) => {
  addEventListener('hashchange', listener);
  return () => removeEventListener('hashchange', listener);
};

/** Where the knitter is, from the part of the address behind the `#`. */
export const useRoute = (): Route => useSyncExternalStore(subscribe, now);

/** Goes there, as a link would. */
export const go = (hash: string): void => {
  location.hash = hash;
};
