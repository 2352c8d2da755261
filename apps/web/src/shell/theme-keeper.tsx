import { useEffect } from 'react';
import { useView } from '../store/index.ts';
import { applyTheme } from './theme.ts';

/** Keeps the page in the chosen light. */
export const ThemeKeeper = () => {
  const { theme } = useView();
  useEffect(() => applyTheme(theme), [theme]);
  return null;
};
