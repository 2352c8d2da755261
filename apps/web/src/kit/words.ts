import { useCallback } from 'react';
import { useView } from '../store/index.ts';

/** Words of the craft that differ between American and British use: [American, British]. */
const WORDS = {
  gauge: ['gauge', 'tension'],
  Gauge: ['Gauge', 'Tension'],
  swatch: ['swatch', 'tension square'],
  Swatch: ['Swatch', 'Tension square'],
  'bind off': ['bind off', 'cast off'],
  'bound off': ['bound off', 'cast off'],
  'bound-off edge': ['bound-off edge', 'cast-off edge'],
  stockinette: ['stockinette', 'stocking stitch'],
  'seed stitch': ['seed stitch', 'moss stitch'],
  yoke: ['yoke', 'yoke'],
  vest: ['vest', 'slipover'],
  Vest: ['Vest', 'Slipover'],
  fiber: ['fiber', 'fibre'],
  Fiber: ['Fiber', 'Fibre'],
  color: ['color', 'colour'],
  gray: ['gray', 'grey'],
  'yarn weight': ['yarn weight', 'yarn thickness'],
} as const;

export type CraftWord = keyof typeof WORDS;

/** The word in the knitter's own English. */
export const useWords = (): ((word: CraftWord) => string) => {
  const { words } = useView();
  return useCallback((word) => WORDS[word][words === 'us' ? 0 : 1], [words]);
};
