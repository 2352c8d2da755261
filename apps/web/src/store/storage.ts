/** How safely this device keeps the garments. */
export type Keeping = 'kept' | 'kept-until-space-runs-short' | 'full' | 'not-kept';

let keeping: Keeping = 'kept';
const listeners = new Set<() => void>();

export const keepingNow = (): Keeping => keeping;

export const setKeeping = (now: Keeping): void => {
  keeping = now;
  for (const listener of listeners) listener();
};

export const onKeeping = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Asks the browser not to throw the garments away when space runs short. */
export const askToPersist = async (): Promise<void> => {
  if (keeping === 'not-kept' || keeping === 'full') return;
  const granted = (await navigator.storage?.persist?.().catch(() => false)) ?? false;
  setKeeping(granted ? 'kept' : 'kept-until-space-runs-short');
};
