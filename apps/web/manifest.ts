/** How the app presents itself once it is installed. */
export const manifest = {
  id: '/',
  name: 'Dryflat',
  short_name: 'Dryflat',
  description: 'What a hand-knitted garment will measure when it is dry.',
  start_url: '/',
  scope: '/',
  display: 'standalone' as const,
  background_color: '#f4eee1',
  theme_color: '#f4eee1',
  icons: [
    { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
    { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
    { src: '/icon-512-masked.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
};
