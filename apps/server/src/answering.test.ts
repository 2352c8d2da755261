import fs from 'node:fs';
import { rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { SCRIPT, SECRET, TEN_BYTES } from './testing/built-app.ts';
import { servedHere } from './testing/served-here.ts';

const at = servedHere();
const { get, raw } = at;
afterEach(() => vi.restoreAllMocks());

const page = async () => expect((await get('/')).status).toBe(200);

describe('how long it is kept', () => {
  it('S2: the page is revalidated', async () => {
    const response = await get('/');
    expect(response.status).toBe(200);
    expect(response.headers.get('cache-control')).toBe('no-cache');
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    const again = await get('/', {
      headers: { 'If-None-Match': response.headers.get('etag') ?? '' },
    });
    expect(again.status).toBe(304);
    expect(again.headers.get('cache-control')).toBe('no-cache');
  });

  it('S2: the service worker is revalidated and is script', async () => {
    const response = await get('/sw.js');
    expect(response.headers.get('cache-control')).toBe('no-cache');
    expect(response.headers.get('content-type')).toMatch(/^(text|application)\/javascript\b/);
  });

  it('S2: hashed assets are kept for good', async () => {
    const response = await get('/assets/app-1a2b3c.js');
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
  });

  it('S2: the page is revalidated under the name of an asset, a refusal is not kept', async () => {
    expect((await get('/assets/gone')).headers.get('cache-control')).toBe('no-cache');
    expect((await get('/assets/gone.js')).headers.get('cache-control')).toBe('no-store');
  });

  it('S2: the manifest has its own type', async () => {
    const response = await get('/app.webmanifest');
    expect(response.headers.get('content-type')).toBe('application/manifest+json');
  });

  it('a rebuild is served without a restart', async () => {
    await get('/assets/app-1a2b3c.js');
    await writeFile(join(at.dir(), 'assets', 'later-4d.js'), 'export const later = 1;');
    expect(await (await get('/assets/later-4d.js')).text()).toContain('later');
    const newer = SCRIPT.replaceAll('120', '99');
    await writeFile(join(at.dir(), 'assets', 'app-1a2b3c.js'), newer);
    expect(await (await get('/assets/app-1a2b3c.js')).text()).toBe(newer);
  });
});

describe('paths', () => {
  it.each(['/garment/one', '/assets', '/assets/', '/?from=home'])(
    'S3: %s answers with the page',
    async (path) => {
      const response = await get(path);
      expect(response.status).toBe(200);
      expect(await response.text()).toContain('<title>page</title>');
    },
  );

  it.each(['/assets/gone-9z.js', '/gone.png', '/graph.json', '/gone%20'])(
    'S3: %s is a missing file, not the page',
    async (path) => expect((await get(path)).status).toBe(404),
  );

  it.each([
    ...['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '//../secret.txt'],
    ...[
      '/..\\secret.txt',
      '/..%5csecret.txt',
      '/%252e%252e/secret.txt',
      '/assets/../../secret.txt',
    ],
    ...['/.built-from', '/%2ebuilt-from', '/.vite/manifest.json', '/assets/../.built-from'],
  ])('S4: %s is not sent', async (path) => {
    const response = await raw(`GET ${path} HTTP/1.1\r\nHost: SERVER\r\nConnection: close\r\n\r\n`);
    expect(response).toMatch(/^HTTP\/1\.1 404 /);
    expect(response).not.toContain(SECRET);
  });

  it.each([
    ['/%', 400],
    ['/%00', 400],
    ['/%zz', 400],
    ['*', 400],
    ['ten.txt', 400],
    ['http://elsewhere.example/ten.txt', 400],
    ['http://SERVER/ten.txt', 200],
    [`/${'a'.repeat(300)}.js`, 404],
  ])('S10: the target %s is answered with %i', async (target, status) => {
    const response = await raw(
      `GET ${target} HTTP/1.1\r\nHost: SERVER\r\nConnection: close\r\n\r\n`,
    );
    expect(response).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    await page();
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('%s is refused', async (method) => {
    const response = await get('/', { method });
    expect(response.status).toBe(405);
    expect(response.headers.get('allow')).toBe('GET, HEAD');
  });
});

describe('ranges', () => {
  const part = async (range: string, headers = {}) => {
    const response = await get('/ten.txt', { headers: { Range: range, ...headers } });
    const { status } = response;
    return { status, range: response.headers.get('content-range'), text: await response.text() };
  };

  it.each([
    ['bytes=0-0', 'bytes 0-0/10', '0'],
    ['bytes=-5', 'bytes 5-9/10', '56789'],
    ['bytes=-99', 'bytes 0-9/10', TEN_BYTES],
    ['bytes=2-4', 'bytes 2-4/10', '234'],
    ['bytes=0-9007199254740993', 'bytes 0-9/10', TEN_BYTES],
  ])('S9: %s', async (range, contentRange, text) => {
    expect(await part(range)).toEqual({ status: 206, range: contentRange, text });
    await page();
  });

  it.each(['bytes=5-1', 'bytes=10-9,0-1', 'bytes=0-1,3-4', 'lines=1-2'])(
    'S9: %s is ignored',
    async (range) => {
      expect(await part(range)).toEqual({ status: 200, range: null, text: TEN_BYTES });
      await page();
    },
  );

  it('S9: a range past the end says how long the file is', async () =>
    expect(await part('bytes=10-')).toMatchObject({ status: 416, range: 'bytes */10' }));

  it('S9: with If-Range the whole is sent, and HEAD knows no ranges', async () => {
    const tag = (await get('/ten.txt')).headers.get('etag');
    expect((await part('bytes=0-0', { 'If-Range': tag })).text).toBe(TEN_BYTES);
    const head = await get('/ten.txt', { method: 'HEAD', headers: { Range: 'bytes=0-0' } });
    expect([head.status, head.headers.get('content-length')]).toEqual([200, '10']);
  });

  it('S11: a range of a text is sent as it is', async () => {
    const headers = { Range: 'bytes=-28', 'Accept-Encoding': 'br' };
    const response = await get('/assets/app-1a2b3c.js', { headers });
    expect(response.headers.get('content-encoding')).toBeNull();
    expect(await response.text()).toBe(SCRIPT.slice(-28));
  });
});

describe('packing', () => {
  const asking =
    'HTTP/1.1\r\nHost: SERVER\r\nConnection: close\r\nAccept-Encoding: gzip, br\r\n\r\n';
  const split = (text: string) => text.split(/\r\n\r\n(.*)/s);

  it('S11: text comes packed, with the length that was sent; HEAD says the same', async () => {
    const [head, body = ''] = split(await raw(`GET /assets/app-1a2b3c.js ${asking}`));
    expect(head).toContain('Content-Encoding: br');
    expect(head).toContain('Vary: Accept-Encoding');
    expect(head).toContain(`Content-Length: ${body.length}\r\n`);
    expect(brotliDecompressSync(Buffer.from(body, 'latin1')).toString()).toBe(SCRIPT);
    const ofHead = split(await raw(`HEAD /assets/app-1a2b3c.js ${asking}`));
    const undated = (text = '') => text.replace(/^Date: .*$/m, '');
    expect(ofHead.map(undated)).toEqual([undated(head), '', '']);
  });

  it('S11: a picture comes as it is', async () => {
    const [head] = split(await raw(`GET /assets/icon-5e6f.png ${asking}`));
    expect(head).not.toContain('Content-Encoding');
    expect(head).toContain('Content-Length: 5000');
  });

  it('S11: a page that was kept packed is known again', async () => {
    const headers = { 'Accept-Encoding': 'br' };
    const tag = (await get('/assets/app-1a2b3c.js', { headers })).headers.get('etag') ?? '';
    const again = await get('/assets/app-1a2b3c.js', {
      headers: { ...headers, 'If-None-Match': tag },
    });
    expect(again.status).toBe(304);
    expect(again.headers.get('vary')).toBe('Accept-Encoding');
  });
});

describe('names', () => {
  it.each([
    ['SERVER', 200],
    ['localhost:PORT', 200],
    ['LOCALHOST:PORT', 200],
    ['[::1]:PORT', 200],
    ['localhost', 421],
    ['127.0.0.1:1', 421],
    ['elsewhere.example:PORT', 421],
    ['localhost.elsewhere.example:PORT', 421],
    ['', 421],
  ])('S8: Host: %s is answered with %i', async (host, status) => {
    const name = host.replace('PORT', `${at.port()}`);
    const response = await raw(`GET / HTTP/1.1\r\nHost: ${name}\r\nConnection: close\r\n\r\n`);
    expect(response).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    if (status === 421) expect(response).toContain(`Open http://127.0.0.1:${at.port()}.`);
  });

  it.each(['Host: SERVER\r\nHost: elsewhere.example', 'X: no host'])(
    'S8: %s does not say whom it asks',
    async (lines) =>
      expect(await raw(`GET / HTTP/1.1\r\n${lines}\r\nConnection: close\r\n\r\n`)).toMatch(
        /^HTTP\/1\.1 400 /,
      ),
  );
});

describe('a file that changes while it is asked for', () => {
  /** What happens to a file after it was looked at and before it is opened. */
  const betweenLookAndOpen = (change: (path: string) => void) => {
    const open = fs.createReadStream;
    vi.spyOn(fs, 'createReadStream').mockImplementationOnce((path, options) => {
      change(`${path}`);
      return open(path, options);
    });
  };

  it('S10: gone, it ends its own answer alone', async () => {
    betweenLookAndOpen((path) => fs.rmSync(path));
    expect((await get('/ten.txt')).status).toBe(404);
    await page();
  });

  it('S10: unreadable, it says so', async () => {
    betweenLookAndOpen((path) => {
      fs.rmSync(path);
      fs.mkdirSync(path);
    });
    const response = await get('/ten.txt');
    expect(response.status).toBe(500);
    expect(await response.text()).toContain('could not be read');
    await page();
  });

  it('S10: shorter, it is not sent with the length that it had', async () => {
    betweenLookAndOpen((path) => fs.writeFileSync(path, 'short'));
    expect((await get('/ten.txt')).status).toBe(500);
    expect(await (await get('/ten.txt')).text()).toBe('short');
  });

  it('S10: a folder that is built anew is missing for a while only', async () => {
    await rename(at.dir(), `${at.dir()}-away`);
    expect((await get('/')).status).toBe(404);
    await rename(`${at.dir()}-away`, at.dir());
    await page();
  });
});
