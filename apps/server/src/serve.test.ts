import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Serving, serve } from './serve.ts';

let dir: string;
let root: string;
let serving: Serving;

beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'dryflat-serve-'));
  dir = join(root, 'dist');
  await mkdir(join(dir, 'assets'), { recursive: true });
  await writeFile(join(root, 'secret.txt'), 'not for the browser');
  await writeFile(join(dir, 'index.html'), '<!doctype html><title>page</title>');
  await writeFile(join(dir, 'sw.js'), 'self.skipWaiting();');
  await writeFile(join(dir, 'manifest.webmanifest'), '{}');
  await writeFile(join(dir, 'assets', 'app-1a2b3c.js'), 'export {};');
  serving = await serve({ dir, port: 0 });
});

afterEach(async () => {
  await serving.close();
  await rm(root, { recursive: true });
});

const get = (path: string, init?: RequestInit) => fetch(`${serving.url}${path}`, init);

/** A request line as it stands: fetch would tidy `..` away before sending it. */
const raw = (requestLine: string): Promise<string> =>
  new Promise((resolve, reject) => {
    const socket = connect(Number(new URL(serving.url).port), '127.0.0.1');
    let text = '';
    socket.on('data', (chunk) => {
      text += chunk;
    });
    socket.on('end', () => resolve(text));
    socket.on('error', reject);
    socket.write(`${requestLine}\r\nHost: x\r\nConnection: close\r\n\r\n`);
  });

describe('headers', () => {
  it('S2: the page is revalidated', async () => {
    const response = await get('/');
    expect(response.status).toBe(200);
    expect(response.headers.get('cache-control')).toBe('no-cache');
    expect(response.headers.get('content-type')).toBe('text/html;charset=utf-8');
    const again = await get('/', {
      headers: { 'If-None-Match': response.headers.get('etag') ?? '' },
    });
    expect(again.status).toBe(304);
  });

  it('S2: the service worker is revalidated and is script', async () => {
    const response = await get('/sw.js');
    expect(response.headers.get('cache-control')).toBe('no-cache');
    expect(response.headers.get('content-type')).toBe('text/javascript');
  });

  it('S2: hashed assets are kept for good', async () => {
    const response = await get('/assets/app-1a2b3c.js');
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
  });

  it('S2: the manifest has its own type', async () => {
    const response = await get('/manifest.webmanifest');
    expect(response.headers.get('content-type')).toBe('application/manifest+json');
  });

  it('S7: every file holds the browser to this origin', async () => {
    for (const path of ['/', '/sw.js', '/assets/app-1a2b3c.js']) {
      const policy = (await get(path)).headers.get('content-security-policy');
      expect(policy).toContain("default-src 'self'");
      expect(policy).not.toMatch(/https?:/);
    }
  });
});

describe('paths', () => {
  it('S3: a path without a file answers with the page', async () => {
    const response = await get('/garment/one');
    expect(response.status).toBe(200);
    expect(await response.text()).toContain('<title>page</title>');
  });

  it('S3: a missing file is a 404, not the page', async () => {
    expect((await get('/assets/gone-9z.js')).status).toBe(404);
    expect((await get('/gone.png')).status).toBe(404);
  });

  it.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '//../secret.txt'])(
    'S4: %s stays inside',
    async (path) => {
      const response = await raw(`GET ${path} HTTP/1.1`);
      expect(response).not.toContain('not for the browser');
    },
  );

  it('writing is refused', async () => {
    expect((await get('/', { method: 'POST', body: 'x' })).status).toBe(405);
  });

  it('a rebuild is served without a restart', async () => {
    await writeFile(join(dir, 'assets', 'later-4d.js'), 'export const later = 1;');
    expect(await (await get('/assets/later-4d.js')).text()).toContain('later');
  });
});

describe('listening', () => {
  it('S1: another host than loopback is refused', async () => {
    const host = '0.0.0.0' as unknown as '127.0.0.1';
    await expect(serve({ dir, port: 0, host })).rejects.toThrow('0.0.0.0 is not a loopback');
  });

  it('S5: a taken port rejects with its code', async () => {
    const port = Number(new URL(serving.url).port);
    await expect(serve({ dir, port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });

  it('S6: close frees the port', async () => {
    const first = await serve({ dir, port: 0 });
    const port = Number(new URL(first.url).port);
    await fetch(first.url);
    await first.close();
    const second = await serve({ dir, port });
    expect((await fetch(second.url)).status).toBe(200);
    await second.close();
  });
});
