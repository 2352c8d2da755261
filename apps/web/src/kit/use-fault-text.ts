import { useCallback } from 'react';
import { useLengths } from './use-lengths.ts';

/** Faults of files name lengths as `508 mm (20 in)`: here they are printed like all others. */
const FILE_LENGTH = /(-?\d+(?:\.\d+)?) mm \(-?[\d.]+ in\)/g;

/** Prints a sentence of a fault with its lengths in the unit that everything is shown in. */
export const useFaultText = (): ((text: string) => string) => {
  const { length, sentence } = useLengths();
  return useCallback(
    (text) => sentence(text.replace(FILE_LENGTH, (_, value: string) => length(Number(value)))),
    [length, sentence],
  );
};
