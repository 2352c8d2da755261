// First, for what it does to a small store that throws.
import './store/local.ts';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './kit/theme.css';
import './kit/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { applyTheme, firstTheme } from './shell/theme.ts';
import { watchForUpdates } from './shell/updates.ts';
import { askWhetherPersists, openShelf, shelveStrays } from './store/index.ts';

applyTheme(firstTheme());
void watchForUpdates();
// Asked for before the page is drawn, which waits for it.
void openShelf().then(shelveStrays);
void askWhetherPersists();

const root = document.getElementById('app');
if (root === null) throw new Error('the page has no #app element');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
