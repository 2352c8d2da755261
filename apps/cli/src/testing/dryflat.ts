import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const BIN = fileURLToPath(new URL('../../bin/dryflat.mjs', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export const emptyFolder = (): string => mkdtempSync(join(tmpdir(), 'dryflat-cli-'));

/** Runs the command as a knitter would, in a folder, with a text on its standard input. */
export const dryflat = (
  line: readonly string[],
  { cwd = tmpdir(), input = '' }: { cwd?: string; input?: string } = {},
): Ran => {
  const ran = spawnSync('node', [BIN, ...line], { cwd, input, encoding: 'utf8' });
  return { code: ran.status, out: ran.stdout, err: ran.stderr };
};

/** Parts of a command line as a shell would split them; knows double quotes and nothing else. */
export const words = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');
