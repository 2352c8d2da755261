const TOKEN = /\{mm:([+-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?)\}/g;

/** Marks a length inside a sentence of the engine: `{mm:123.4}`. `length` in millimetres, finite. */
export function lengthToken(length: number): string {
  if (!Number.isFinite(length)) throw new RangeError(`a length of ${length} cannot be printed`);
  return `{mm:${length}}`;
}

/**
 * Replaces each `{mm:…}` by what `print` makes of it, so that a sentence speaks the reader's unit. One
 * that is beyond all numbers is no length of ours but somebody's own words, and stays.
 */
export const fillLengths = (text: string, print: (length: number) => string): string =>
  text.replace(TOKEN, (token, length: string) =>
    Number.isFinite(Number(length)) ? print(Number(length)) : token,
  );
