import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { ROOT } from './root.mjs';

let checkout: string;
beforeEach(() => {
  checkout = mkdtempSync(join(tmpdir(), 'dryflat-read-only-'));
  for (const part of ['scripts', 'package.json', 'package-lock.json', 'apps/cli/bin'])
    cpSync(join(ROOT, part), join(checkout, part), { recursive: true });
  chmodSync(checkout, 0o555);
});
afterEach(() => {
  chmodSync(checkout, 0o755);
  rmSync(checkout, { recursive: true });
});

/** Root may write anywhere, so it runs it as nobody. */
const NOBODY = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

const run = (program: string, ...args: readonly string[]) =>
  spawnSync(process.execPath, [join(checkout, program), ...args], {
    encoding: 'utf8',
    ...NOBODY,
  });

it.each([
  'scripts/start.mjs',
  'scripts/verify.mjs',
  'scripts/build.mjs',
  'apps/cli/bin/dryflat.mjs',
])(
  '%s, in a folder that is read only, says what it needs and leaves no trace of a stack',
  (program) => {
    const { status, stdout, stderr } = run(program);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toContain(`may not write to ${checkout}`);
    expect(stderr).toContain(`copy the whole folder ${checkout} to a place of your own`);
    expect(stderr).not.toMatch(/^ {4}at |Error:/m);
  },
);

it('the command line runs from there when it is put together already', () => {
  const made = join(checkout, 'apps', 'cli', 'dist', 'dryflat.mjs');
  mkdirSync(dirname(made));
  writeFileSync(made, "console.log('it runs')");
  writeFileSync(`${made}.inputs.json`, JSON.stringify({ inputs: [], external: [] }));
  expect(run('apps/cli/bin/dryflat.mjs')).toMatchObject({
    status: 0,
    stdout: 'it runs\n',
    stderr: '',
  });
});
