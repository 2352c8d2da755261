// @ts-check
// Whether the app, the command line and the engine do the same on another Node.
import { execFile, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { ROOT } from './root.mjs';

/** Those with long support, and the oldest that will do; the newest last. */
export const NODES = [20, 22, 24, 26];

const ran = promisify(execFile);

/**
 * Path of a Node: the one that runs this, or the one that the npm package `node` brings. npm keeps
 * that, so that only the first time needs a network; without one it throws.
 * @param {number} major
 */
export const nodeOf = async (major) => {
  if (process.versions.node.startsWith(`${major}.`)) return process.execPath;
  const brought = ['--yes', '--prefer-offline', `--package=node@${major}`];
  const { stdout } = await ran(
    'npm',
    ['exec', ...brought, '--', 'node', '-p', 'process.execPath'],
    { cwd: ROOT },
  );
  return stdout.trim();
};

/**
 * Starts the app and fetches its page, the script of it, and the licences.
 * @param {string} node
 * @param {NodeJS.ProcessEnv} env
 */
const served = async (node, env) => {
  const start = [join(ROOT, 'scripts', 'start.mjs'), '--no-install'];
  const child = spawn(node, start, {
    env: { ...env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = once(child, 'exit');
  let said = '';
  const url = await new Promise((resolve, reject) => {
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (chunk) => {
        said += chunk;
        const address = /at (http:\S+)[\s\S]*Ctrl-C/.exec(said)?.[1];
        if (address !== undefined) resolve(address);
      });
    ended.then(() => reject(new Error(`it ended before it served:\n${said}`)));
  });
  /** @param {string} path */
  const got = async (path) => {
    const response = await fetch(url + path);
    const body = await response.text();
    const type = response.headers.get('content-type')?.replace(/;.*/, '');
    const hash = createHash('sha256').update(body).digest('hex');
    return { body, answer: `${response.status} ${type} ${hash}` };
  };
  try {
    const page = await got('/');
    const script = /src="(\/assets\/[^"]+\.js)"/.exec(page.body)?.[1];
    if (script === undefined) throw new Error(`its page names no script:\n${page.body}`);
    return {
      page: page.answer,
      script: (await got(script)).answer,
      licences: (await got('/notices.txt')).answer,
      // Whoever comes first may have to build.
      said: said.replaceAll(url, 'URL').replace('Building the app …\n', ''),
    };
  } finally {
    child.kill('SIGINT');
    await ended;
  }
};

/**
 * What the app, the command line and the engine give on a Node, warnings included: the same on every
 * Node, byte for byte. Throws where one of them fails.
 * @param {string} node its path
 */
export const smokeOf = async (node) => {
  // What they start in turn is to be run by the same Node.
  const env = { ...process.env, PATH: `${dirname(node)}${delimiter}${process.env.PATH}` };
  const folder = mkdtempSync(join(tmpdir(), 'dryflat-node-'));
  const program = join(ROOT, 'apps', 'cli', 'bin', 'dryflat.mjs');
  /** @param {string} command */
  const dryflat = (command) => ran(node, [program, ...command.split(' ')], { cwd: folder, env });
  try {
    return {
      served: await served(node, env),
      example: await dryflat('example waistcoat -o waistcoat.json'),
      forecast: await dryflat('forecast waistcoat.json'),
      block: await dryflat('block waistcoat.json --json'),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
};
