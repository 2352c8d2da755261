import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { complaintAbout } from './lib/node-version.mjs';
import { NODES, nodeOf, smokeOf } from './lib/nodes.mjs';
import { ROOT } from './lib/root.mjs';

const START = join(ROOT, 'scripts', 'start.mjs');
const elsewhere = mkdtempSync(join(tmpdir(), 'dryflat-start-'));
afterAll(() => rmSync(elsewhere, { recursive: true }));

const start = (args: readonly string[], env: Record<string, string>) =>
  spawnSync('node', [START, ...args], {
    cwd: elsewhere,
    env: { ...process.env, ...env },
    encoding: 'utf8',
    timeout: 120_000,
  });

/** Waits until the output holds a pattern; what was printed until then. */
const printed = async (child: ChildProcess, wanted: RegExp): Promise<string> => {
  let text = '';
  child.stdout?.on('data', (chunk) => {
    text += chunk;
  });
  await expect.poll(() => text, { timeout: 120_000 }).toMatch(wanted);
  return text;
};

it('serves the app from any folder, prints where, and ends cleanly on Ctrl-C', async () => {
  const child = spawn('node', [START, '--no-install'], {
    cwd: elsewhere,
    env: { ...process.env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const text = await printed(child, /Ctrl-C/);
  const url = /Dryflat is at (http:\/\/127\.0\.0\.1:\d+)/.exec(text)?.[1] ?? '';
  const page = await fetch(url);
  expect(page.status).toBe(200);
  expect(await page.text()).toContain('<div id="');
  // What the build notes for itself lies beside the app and is not served.
  for (const path of ['/graph.json', '/.built-from', '/.vite/manifest.json'])
    expect((await fetch(url + path)).status).toBe(404);
  child.kill('SIGINT');
  const [code] = await once(child, 'exit');
  expect(code).toBe(0);
  await expect(fetch(url)).rejects.toThrow();
}, 150_000);

it('a taken port is explained, with one that is free', async () => {
  const taken = createServer();
  await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
  const { port } = taken.address() as { port: number };
  const { status, stderr, stdout } = start(['--no-install'], { PORT: `${port}` });
  taken.close();
  expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
  expect(stderr).toContain(`Port ${port} is taken`);
  expect(stderr).toMatch(/PORT=\d+ npm start/);
}, 150_000);

// The newest Node is 200 MB to fetch, the first time.
it('app, command line and engine do on the newest Node what they do on this one', async () => {
  const newest = await nodeOf(NODES.at(-1) ?? 0);
  const here = await smokeOf(process.execPath);
  expect(here.served).toMatchObject({
    page: expect.stringMatching(/^200 text\/html /),
    script: expect.stringMatching(/^200 (text|application)\/javascript /),
    licences: expect.stringMatching(/^200 text\/plain /),
  });
  expect([here.forecast.stderr, here.block.stderr]).toEqual(['', '']);
  expect(await smokeOf(newest)).toEqual(here);
}, 300_000);

it('a PORT that is none, and an option that is none, end with 2', () => {
  expect(start([], { PORT: 'harbour' })).toMatchObject({
    status: 2,
    stderr:
      'PORT is "harbour", which is not a port. Give a whole number from 1024 to 65535, or leave it out for 4747.\n',
  });
  const { status, stderr } = start(['--fast'], {});
  expect(status).toBe(2);
  expect(stderr).toContain("Unknown option '--fast'");
});

it('--help tells of PORT and --no-install', () => {
  const { status, stdout } = start(['--help'], {});
  expect(status).toBe(0);
  for (const word of ['PORT=', '--no-install', 'Ctrl-C']) expect(stdout).toContain(word);
});

it.each([
  ['20.18.9', false],
  ['18.20.0', false],
  ['20.19.0', true],
  ['22.0.0', true],
])('Node %s will do: %s', (version, enough) => {
  expect(complaintAbout(version) === null).toBe(enough);
});
