/** What can be said to go through the steps. */
export type Spoken = 'next' | 'back' | 'again';

const WORDS: readonly (readonly [RegExp, Spoken])[] = [
  [/\b(next|on|onward|done|pinned)\b/g, 'next'],
  [/\b(back|before|previous)\b/g, 'back'],
  [/\b(again|repeat|what)\b/g, 'again'],
];

/** The last word in what was heard that is one of ours; null where there is none. */
export const spokenIn = (heard: string): Spoken | null => {
  const text = heard.toLowerCase();
  let [best, at]: [Spoken | null, number] = [null, -1];
  for (const [word, means] of WORDS)
    for (const found of text.matchAll(word))
      if (found.index > at) [best, at] = [means, found.index];
  return best;
};

/**
 * What was said, of one alternative of a recogniser: the only text that it has beside a number for how
 * sure it is. Inherited properties count, as an interface of the platform has no others.
 */
export const wordsIn = (alternative: object): string => {
  for (const key in alternative) {
    const value = (alternative as Readonly<Record<string, unknown>>)[key];
    if (typeof value === 'string') return value;
  }
  return '';
};
