/**
 * The browser's small store, and the only place that touches it: a browser that is told to keep nothing
 * throws at the mere mention of it, or as soon as it is used. What it does not take holds for this visit.
 */
const unkept = new Map<string, string>();

// The library of shared documents looks into it while it is loaded, and would end the page where that throws.
// So this file is the first that the page loads, and takes a store of that kind out of sight.
try {
  localStorage.getItem('');
} catch {
  Reflect.defineProperty(globalThis, 'localStorage', { value: undefined });
}

export const readLocal = (key: string): string | null => {
  try {
    return unkept.get(key) ?? localStorage.getItem(key);
  } catch {
    return null;
  }
};

export const writeLocal = (key: string, text: string): void => {
  unkept.set(key, text);
  try {
    localStorage.setItem(key, text);
    unkept.delete(key);
  } catch {
    // Full or forbidden.
  }
};

export const removeLocal = (key: string): void => {
  unkept.delete(key);
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept there.
  }
};

/** Keys of all that is held, in no order. */
export const localKeys = (): readonly string[] => {
  const held = [...unkept.keys()];
  try {
    return [...held, ...Object.keys(localStorage)];
  } catch {
    return held;
  }
};
