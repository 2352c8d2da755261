/**
 * Response headers by path.
 *
 * Files under `/assets/` carry a hash of their content in their name, so they never change and are
 * kept for a year. Everything else, the page, the service worker and its manifest first of all, is
 * asked for again each time (an ETag makes that cheap): a stale service worker would pin an old app.
 */
const YEAR_S = 31_536_000;

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

const EVERYWHERE: Readonly<Record<string, string>> = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Content-Security-Policy': CONTENT_POLICY,
};

export const cacheControl = (pathname: string): string =>
  pathname.startsWith('/assets/') ? `public, max-age=${YEAR_S}, immutable` : 'no-cache';

/** Headers of a file that exists; `pathname` begins with a slash and carries no query. */
export const headersOf = (pathname: string): Readonly<Record<string, string>> => ({
  ...EVERYWHERE,
  'Cache-Control': cacheControl(pathname),
  ...(pathname.endsWith('.webmanifest') ? { 'Content-Type': 'application/manifest+json' } : {}),
});
