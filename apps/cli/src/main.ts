import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { text } from 'node:stream/consumers';
import { wantsColours } from './print/style.ts';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';

const installed = createRequire(import.meta.url);

/** Of this place, not of Greenwich. */
const today = (): string => {
  const now = new Date();
  const day = new Date(now.getTime() - now.getTimezoneOffset() * 60_000);
  return day.toISOString().slice(0, 10);
};

const surroundings: Surroundings = {
  read: (path) => (path === '-' ? text(process.stdin) : readFile(path, 'utf8')),
  write: (path, content, replace) => writeFile(path, content, { flag: replace ? 'w' : 'wx' }),
  font: (file) => readFile(installed.resolve(file)),
  random: Math.random,
  today,
  colours: wantsColours(process.stdout.isTTY === true, process.env),
};

// A reader that closes early (`dryflat … | head`) is no fault of anybody.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { code, out, err } = await runProgram(process.argv.slice(2), surroundings);
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = code;
} catch (error) {
  process.stderr.write(
    `dryflat: this is a fault of the program, not of your file.\n${(error as Error).stack}\n`,
  );
  process.exitCode = 1;
}
