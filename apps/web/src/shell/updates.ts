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
export const watchForUpdates = async (): Promise<void> => {
  if (!import.meta.env.PROD) return;
  try {
    // Not there on an address without https; throws in a frame that is shut in.
    const workers = navigator.serviceWorker;
    workers.addEventListener('controllerchange', () => {
      if (asked) location.reload();
    });
    watch(await workers.register('/sw.js'));
  } catch (error) {
    console.warn('Dryflat will not work offline in this browser:', error);
  }
};

export const takeUpdate = (): void => {
  asked = true;
  waiting?.postMessage({ type: 'SKIP_WAITING' });
};
