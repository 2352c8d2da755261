/** ms. Longer than anything takes on a phone that is doing well: from then on it can be stopped. */
const LONG = 4_000;

/** What is told in place of an answer that was stopped. */
export const STOPPED = 'stopped';

const atWork = new Set<() => void>();
const listeners = new Set<() => void>();
const tell = (): void => {
  for (const listener of listeners) listener();
};

/** Notes that a calculation has begun, and how it is stopped; returns what notes that it is over. */
export const longWork = (stop: () => void): (() => void) => {
  const timer = setTimeout(() => {
    atWork.add(stop);
    tell();
  }, LONG);
  return () => {
    clearTimeout(timer);
    if (atWork.delete(stop)) tell();
  };
};

/** Whether any calculation has been at work for long. */
export const isLongWork = (): boolean => atWork.size > 0;

export const onLongWork = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Stops whatever has been at work for long; each tells so where its answer would stand. */
export const stopLongWork = (): void => {
  for (const stop of [...atWork]) stop();
};
