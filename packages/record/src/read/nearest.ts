import { distance } from 'fastest-levenshtein';

/** The candidate that a misspelled word most likely means: at most a third of its letters differ. */
export const nearest = (word: string, candidates: Iterable<string>): string | null => {
  let best: string | null = null;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of candidates) {
    const apart = distance(word.toLowerCase(), candidate.toLowerCase());
    if (apart < least) [best, least] = [candidate, apart];
  }
  return best;
};
