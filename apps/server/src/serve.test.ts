import { readdirSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { serve } from './serve.ts';
import { exchange } from './testing/exchange.ts';
import { hostileRun } from './testing/hostile.ts';
import { servedHere } from './testing/served-here.ts';

const at = servedHere();
const { get, raw } = at;

describe('listening', () => {
  it('S1: another host than loopback is refused', async () => {
    const host = '0.0.0.0' as unknown as '127.0.0.1';
    await expect(serve({ dir: at.dir(), port: 0, host })).rejects.toThrow(
      '0.0.0.0 is not a loopback',
    );
  });

  it('S5: a taken port rejects with its code', async () => {
    await expect(serve({ dir: at.dir(), port: at.port() })).rejects.toMatchObject({
      code: 'EADDRINUSE',
    });
  });

  it('S6: close frees the port', async () => {
    const first = await serve({ dir: at.dir(), port: 0 });
    const port = Number(new URL(first.url).port);
    await fetch(first.url);
    await first.close();
    const second = await serve({ dir: at.dir(), port });
    expect((await fetch(second.url)).status).toBe(200);
    await second.close();
  });
});

describe('every answer', () => {
  const GET = 'GET / HTTP/1.1\r\nHost: SERVER\r\nConnection: close\r\n';

  it.each([
    [200, `${GET}\r\n`],
    [206, `${GET.replace('/', '/ten.txt')}Range: bytes=0-0\r\n\r\n`],
    [304, `${GET}If-None-Match: *\r\n\r\n`],
    [400, 'GET / HTTP/1.1\r\nConnection: close\r\n\r\n'],
    [400, 'no request at all\r\n\r\n'],
    [400, `${GET}no header\r\n\r\n`],
    [404, `${GET.replace('/', '/gone.js')}\r\n`],
    [405, `${GET.replace('GET', 'POST')}Expect: 100-continue\r\nContent-Length: 5\r\n\r\n`],
    [412, `${GET}If-Match: "another"\r\n\r\n`],
    [416, `${GET.replace('/', '/ten.txt')}Range: bytes=10-\r\n\r\n`],
    [421, `${GET.replace('SERVER', 'elsewhere.example')}\r\n`],
    [431, `${GET}X: ${'x'.repeat(20_000)}\r\n\r\n`],
    [200, `${GET}Expect: the best\r\n\r\n`],
  ])('S7: %i holds the browser to this origin', async (status, text) => {
    const [head = '', body = ''] = (await raw(text)).split('\r\n\r\n');
    expect(head).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    const policy = /^Content-Security-Policy: (.*)$/m.exec(head)?.[1];
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/https?:/);
    for (const line of [
      'X-Content-Type-Options: nosniff',
      'Referrer-Policy: no-referrer',
      'Cross-Origin-Opener-Policy: same-origin',
      'Cross-Origin-Resource-Policy: same-origin',
    ])
      expect(head).toContain(line);
    expect(head).toMatch(/^Permissions-Policy: .*\bcamera=\(\)/m);
    expect(head).not.toMatch(/(microphone|screen-wake-lock|clipboard-write)=\(\)/);
    if (status >= 400) expect(body).toMatch(/^[A-Z"].*\.\n$/);
  });

  it('S7: what follows a sound request on its connection waits for the answer to that', async () => {
    const text = await raw(
      `${GET.replace('Connection: close\r\n', '')}\r\nno request at all\r\n\r\n`,
    );
    expect(text.match(/HTTP\/1\.1 \d{3}/g)).toEqual(['HTTP/1.1 200', 'HTTP/1.1 400']);
  });

  it('a client that has no more to send is still answered', async () => {
    const text = `GET /ten.txt HTTP/1.1\r\nHost: 127.0.0.1:${at.port()}\r\n\r\n`;
    const back = await exchange({ port: at.port(), text, after: 'half-close' });
    expect(back).toMatchObject({ end: 'closed', text: expect.stringContaining('0123456789') });
  });
});

describe('hostile requests', () => {
  setFlagsFromString('--expose-gc');
  const collect: () => void = runInNewContext('gc');
  const memory = () => {
    collect();
    const { heapUsed, external } = process.memoryUsage();
    return (heapUsed + external) / 1e6;
  };
  const handles = () => readdirSync('/proc/self/fd').length;

  it('S10: two thousand leave it as it was', async () => {
    // Once before: what is loaded and kept at first use is no leak.
    await hostileRun(at.port(), 200, 1);
    const before = { memory: memory(), handles: handles() };
    const { sent, stopped, answers, bare } = await hostileRun(at.port(), 2000, 20_261_130);
    expect({ sent, stopped, bare }).toEqual({ sent: 2000, stopped: 0, bare: 0 });
    // Some are left alone or cut short, and those are not answered.
    expect(answers).toBeGreaterThan(1000);
    expect(await (await get('/')).text()).toContain('<title>page</title>');
    // fetch keeps a connection open for a while, both ends of it in this process.
    await expect.poll(handles, { timeout: 5000 }).toBeLessThanOrEqual(before.handles + 2);
    expect(memory() - before.memory).toBeLessThan(10);
  });
});
