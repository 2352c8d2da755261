import { useEffect } from 'react';
import { setKeeping, useShelf, useView } from '../store/index.ts';
import { applyTheme } from './theme.ts';

/** Keeps the page in the chosen light, and says so where the browser keeps nothing. */
export const ThemeKeeper = () => {
  const { theme } = useView();
  const { kept } = useShelf();
  useEffect(() => applyTheme(theme), [theme]);
  useEffect(() => {
    if (!kept) setKeeping('not-kept');
  }, [kept]);
  return null;
};
