import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { notices } from '../../scripts/lib/notices.mjs';
import { manifest } from './manifest.ts';

/** What the service worker is made of: another bundler makes it, and this is what that one takes. */
const { seen, told } = notices([
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  '@trickfilm400/rollup-plugin-off-main-thread',
]);

/** Every file of the app is fetched on the first visit, so that the second needs no network. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    react(),
    told,
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      manifest,
      manifestFilename: 'app.webmanifest',
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff,woff2,webmanifest}', 'notices.txt'],
        navigateFallback: '/index.html',
        cleanupOutdatedCaches: true,
        importScripts: ['/reminder-click.js'],
      },
    }),
  ],
  worker: { format: 'es', plugins: () => [seen] },
  build: { target: 'es2022', manifest: true, sourcemap: false },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1' },
});
