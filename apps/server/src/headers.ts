/** The app needs nothing from anywhere but its own origin; the browser is told to hold it to that. */
const CONTENT_POLICY = [
  "default-src 'self'",
  // The mechanics of the mat are WebAssembly of our own; no code is made from text.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/**
 * What the app never asks of a device. Left to it: the microphone (spoken commands while pinning),
 * the screen's wake lock, the clipboard and notices. Pictures come by a file picker, which asks no
 * leave of the camera.
 */
const DENIED = [
  'accelerometer',
  'camera',
  'display-capture',
  'geolocation',
  'gyroscope',
  'hid',
  'magnetometer',
  'midi',
  'payment',
  'serial',
  'usb',
];

/** On every answer, errors included. */
export const EVERYWHERE: Readonly<Record<string, string>> = {
  'Content-Security-Policy': CONTENT_POLICY,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': DENIED.map((feature) => `${feature}=()`).join(', '),
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

const YEAR_S = 31_536_000;

/**
 * How long a file is kept; `file` is its path in the served folder, without a slash at the front.
 *
 * Files in `assets` carry a hash of their content in their name, so they never change and are kept
 * for a year. Everything else, the page, the service worker and its manifest first of all, is asked
 * for again each time (an ETag makes that cheap): a stale service worker would pin an old app.
 */
export const cacheControl = (file: string): string =>
  /^assets[\\/]/.test(file) ? `public, max-age=${YEAR_S}, immutable` : 'no-cache';
