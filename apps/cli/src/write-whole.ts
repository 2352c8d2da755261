import { unlinkSync } from 'node:fs';
import { open, realpath, rename, stat, unlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

const exists = (path: string): Error =>
  Object.assign(new Error(`${path} is there`), { code: 'EEXIST' });

/** What lies at a path, links followed; null where nothing does. */
const standing = async (path: string) => {
  try {
    return await stat(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
};

const STOPS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Runs the work; a stop by the keyboard or the system meanwhile removes the draft and ends the program. */
const untilStopped = async (draft: string, work: () => Promise<void>): Promise<void> => {
  const stop = (): void => {
    unlinkSync(draft);
    process.exit(130);
  };
  for (const signal of STOPS) process.once(signal, stop);
  try {
    await work();
  } finally {
    for (const signal of STOPS) process.off(signal, stop);
  }
};

/**
 * Writes a file whole or not at all: beside it first, then renamed, so that a full disk or a stop
 * half-way leaves what was there. What is no file, a pipe or a device, has nothing to keep and is
 * written to. Rejects with the system's error, and with `EEXIST` where a file is there and `replace` is
 * false. (The npm package write-file-atomic 7 takes a write that the disk cut short for a whole one.)
 */
export const writeWhole = async (
  path: string,
  content: string | Uint8Array,
  replace: boolean,
): Promise<void> => {
  const there = await standing(path);
  if (there !== null && !replace) throw exists(path);
  if (there !== null && !there.isFile()) return writeFile(path, content);
  const target = there === null ? path : await realpath(path);
  const draft = join(dirname(target), `.dryflat-${process.pid}.draft`);
  const file = await open(draft, 'wx', there?.mode ?? 0o666);
  await untilStopped(draft, async () => {
    try {
      await file.writeFile(content);
      await file.sync();
      await file.close();
      await rename(draft, target);
    } catch (error) {
      await file.close().catch(() => {});
      await unlink(draft).catch(() => {});
      throw error;
    }
  });
};
