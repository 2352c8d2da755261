import { useMemo, useSyncExternalStore } from 'react';
import { writeLocal } from './local.ts';
import { useShelf } from './use-shelf.ts';

export type Units = 'cm' | 'in';
export type Words = 'us' | 'uk';
export type Theme = 'system' | 'light' | 'dark';

export interface View {
  readonly units: Units;
  readonly words: Words;
  readonly theme: Theme;
  readonly setUnits: (units: Units) => void;
  readonly setWords: (words: Words) => void;
  readonly setTheme: (theme: Theme) => void;
}

const oneOf = <T extends string>(value: unknown, all: readonly T[], otherwise: T): T =>
  all.includes(value as T) ? (value as T) : otherwise;

/** Until the knitter says otherwise: inches and American words where the browser is American. */
const american = (): boolean => /^en-US$/i.test(navigator.language);

/** How everything is shown: the unit of length, the words of the craft, light or dark. */
export const useView = (): View => {
  const shelf = useShelf();
  const settings = useSyncExternalStore(shelf.subscribe, shelf.settings);
  return useMemo(
    () => ({
      units: oneOf(settings.units, ['cm', 'in'], american() ? 'in' : 'cm'),
      words: oneOf(settings.words, ['us', 'uk'], american() ? 'us' : 'uk'),
      theme: oneOf(settings.theme, ['system', 'light', 'dark'], 'system'),
      setUnits: (units) => shelf.setSetting('units', units),
      setWords: (words) => shelf.setSetting('words', words),
      setTheme: (theme) => {
        shelf.setSetting('theme', theme);
        writeLocal('dryflat-view', theme);
      },
    }),
    [settings, shelf],
  );
};
