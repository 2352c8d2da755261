let waiting: ServiceWorker | null = null;
let asked = false;
const listeners = new Set<() => void>();

export const updateWaits = (): boolean => waiting !== null;

export const onUpdate = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

const offer = (worker: ServiceWorker | null): void => {
  if (worker === null || navigator.serviceWorker.controller === null) return;
  waiting = worker;
  for (const listener of listeners) listener();
};

const watch = (registration: ServiceWorkerRegistration | undefined): void => {
  // Where service workers are blocked, some browsers resolve with nothing.
  if (registration === undefined) return;
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed') offer(registration.waiting);
    });
  });
};

/**
 * Keeps a copy of the app on the device. A newer one is fetched in the background and then only
 * offered: the page is loaded anew when the knitter asks for it, never under her hands.
 */
export const watchForUpdates = (): void => {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
  });
  navigator.serviceWorker.register('/sw.js').then(watch, (error: unknown) => {
    console.warn('Dryflat will not work offline in this browser:', error);
  });
};

export const takeUpdate = (): void => {
  asked = true;
  waiting?.postMessage({ type: 'SKIP_WAITING' });
};
