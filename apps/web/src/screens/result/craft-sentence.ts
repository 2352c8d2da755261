import { useCallback } from 'react';
import { type CraftWord, useLengths, useWords } from '../../kit/index.ts';

/** Words of the engine's sentences, which are written in American, longest first. */
const IN_SENTENCES: readonly CraftWord[] = [
  'bound-off edge',
  'seed stitch',
  'stockinette',
  'bound off',
  'swatch',
  'Swatch',
  'gauge',
  'Gauge',
];
const PATTERN = new RegExp(`\\b(${IN_SENTENCES.join('|')})\\b`, 'g');

/** The words of an American sentence exchanged for the knitter's own. */
export const inWordsOf = (sentence: string, word: (word: CraftWord) => string): string =>
  sentence.replace(PATTERN, (found) => word(found as CraftWord));

/**
 * Sentences of the engine in the knitter's unit and English. `plain` leaves the words alone: for
 * sentences that carry a name which the knitter gave.
 */
export const useSentences = () => {
  const { sentence } = useLengths();
  const word = useWords();
  return {
    plain: sentence,
    own: useCallback((text: string) => sentence(inWordsOf(text, word)), [sentence, word]),
  };
};
