import { readLocal, type Theme } from '../store/index.ts';

/** The last choice, read before the shelf is, so that the first paint is not in the wrong light. */
export const firstTheme = (): Theme => {
  const kept = readLocal('dryflat-view');
  return kept === 'light' || kept === 'dark' ? kept : 'system';
};

const dark = matchMedia('(prefers-color-scheme: dark)');
let chosen: Theme = 'system';

const paint = (): void => {
  const isDark = chosen === 'dark' || (chosen === 'system' && dark.matches);
  document.documentElement.dataset.theme = isDark ? 'dark' : 'light';
};

/** Sets the page in that light; `system` follows the device from then on. */
export const applyTheme = (theme: Theme): void => {
  chosen = theme;
  paint();
};

// Older browsers cannot be asked to tell of a change.
dark.addEventListener?.('change', paint);
