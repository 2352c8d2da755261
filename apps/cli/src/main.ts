import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Readable } from 'node:stream';
import { wantsColours } from './print/style.ts';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';
import { writeWhole } from './write-whole.ts';

const installed = createRequire(import.meta.url);

/** Of this place, not of Greenwich. */
const today = (): string => {
  const now = new Date();
  const day = new Date(now.getTime() - now.getTimezoneOffset() * 60_000);
  return day.toISOString().slice(0, 10);
};

/** Bytes: a record with all the photos that it may hold comes to less than half of this. */
const MOST_BYTES = 32 * 2 ** 20;

/** A text that ends in time; rejects with `EFBIG` for one that is longer than any record. */
const textOf = async (stream: Readable): Promise<string> => {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of stream) {
    parts.push(part);
    bytes += part.length;
    if (bytes > MOST_BYTES) throw Object.assign(new Error('a file too large'), { code: 'EFBIG' });
  }
  return Buffer.concat(parts).toString('utf8');
};

const surroundings: Surroundings = {
  read: (path) => textOf(path === '-' ? process.stdin : createReadStream(path)),
  write: writeWhole,
  font: (file) => readFile(installed.resolve(file)),
  random: Math.random,
  today,
  colours: wantsColours(process.stdout.isTTY === true, process.env),
};

// A reader that closes early (`dryflat … | head`) is no fault of anybody; a full disk behind `>` is told.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') return;
  process.stderr.write(`standard output: it could not be written (${code}). Nothing else was.\n`);
  process.exitCode = 2;
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
