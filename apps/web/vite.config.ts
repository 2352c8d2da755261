import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { manifest } from './manifest.ts';

/** Every file of the app is fetched on the first visit, so that the second needs no network. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      manifest,
      manifestFilename: 'app.webmanifest',
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff,woff2,webmanifest}'],
        navigateFallback: '/index.html',
        cleanupOutdatedCaches: true,
        importScripts: ['/reminder-click.js'],
      },
    }),
  ],
  worker: { format: 'es' },
  build: { target: 'es2022', manifest: 'graph.json', sourcemap: false },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1' },
});
