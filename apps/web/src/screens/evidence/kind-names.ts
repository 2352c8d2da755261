import type { Specimen } from '@dryflat/record';
import { useWords } from '../../kit/index.ts';

interface KindName {
  readonly value: Specimen['kind'];
  readonly label: string;
}

/** Kinds of evidence, in the words that are switched on. */
export const useKindNames = (): readonly KindName[] => {
  const word = useWords();
  return [
    { value: 'swatch', label: word('Swatch') },
    { value: 'part', label: 'Part of the garment' },
    { value: 'piece', label: 'A whole piece' },
    { value: 'past-garment', label: 'A garment from before' },
  ];
};
