import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { codingFor, packing } from './packing.ts';

const bytes = Buffer.from('knit two together, '.repeat(200));
const script = { path: '/app.js', version: '"1"', type: 'text/javascript', bytes };

it.each([
  ['gzip, deflate, br, zstd', 'br'],
  ['gzip, deflate', 'gzip'],
  ['*', 'br'],
  ['br;q=0, *', 'gzip'],
  ['br;q=0, gzip;q=0.1', 'gzip'],
  ['BR', 'br'],
  ['gzip;q=0', null],
  ['*;q=0', null],
  ['identity', null],
  ['deflate', null],
  ['', null],
  [undefined, null],
])('S11: Accept-Encoding %s takes %s', (accepted, coding) =>
  expect(codingFor(accepted, script)).toBe(coding),
);

it.each([
  ['text/html; charset=utf-8', 'br'],
  ['application/javascript; charset=utf-8', 'br'],
  ['application/manifest+json', 'br'],
  ['image/svg+xml', 'br'],
  ['image/png', null],
  ['font/woff2', null],
])('S11: %s is sent as %s', (type, coding) =>
  expect(codingFor('br', { ...script, type })).toBe(coding),
);

it('S11: what fits into one packet is not packed', () =>
  expect(codingFor('br', { ...script, bytes: bytes.subarray(0, 900) })).toBeNull());

it('S11: a version is packed once in each coding, and a newer one anew', async () => {
  const packed = packing();
  const first = await packed(script, 'br');
  expect(brotliDecompressSync(first)).toEqual(bytes);
  expect(await packed(script, 'br')).toBe(first);
  expect(gunzipSync(await packed(script, 'gzip'))).toEqual(bytes);
  const newer = { ...script, version: '"2"', bytes: Buffer.from('purl one, '.repeat(200)) };
  expect(brotliDecompressSync(await packed(newer, 'br'))).toEqual(newer.bytes);
});
