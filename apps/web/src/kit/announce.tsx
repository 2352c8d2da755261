import { useSyncExternalStore } from 'react';

let said = '';
const listeners = new Set<() => void>();

/** Tells a screen reader something that changed out of its sight. */
export const announce = (text: string): void => {
  said = text;
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The live region behind `announce`; once per page. */
export const Announcer = () => (
  <div className="df-unseen" role="status" aria-live="polite">
    {useSyncExternalStore(subscribe, () => said)}
  </div>
);
