import { renameSync, rmSync } from 'node:fs';
import { open, readlink, realpath, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve, sep } from 'node:path';
import type { NewFile, NotWritten } from './surroundings.ts';

const refusal = (code: string): Error => Object.assign(new Error(code), { code });

const isMissing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT';

/** What lies at a path, links followed; null where nothing does. */
const standing = async (path: string) => {
  try {
    return await stat(path);
  } catch (error) {
    if (isMissing(error)) return null;
    throw error;
  }
};

/** Where a file of this name is or will be, links followed, those that lead to nothing yet too. */
const landing = async (path: string): Promise<string> => {
  try {
    return await realpath(path);
  } catch (error) {
    if (!isMissing(error) || path.endsWith(sep)) throw error;
    const place = join(await realpath(dirname(path)), basename(path));
    const link = await readlink(place).catch(() => null);
    return link === null ? place : landing(resolve(dirname(place), link));
  }
};

type There = Awaited<ReturnType<typeof standing>>;

interface Placed {
  readonly path: string;
  readonly content: NewFile[1];
  readonly there: There;
  readonly target: string;
  readonly draft: string;
}

/** Where a file goes; what is no file, a pipe or a device, is its own target. */
const placed = async ([path, content]: NewFile, replace: boolean): Promise<Placed> => {
  const there = await standing(path);
  if (there?.isDirectory()) throw refusal('EISDIR');
  if (there !== null && !replace) throw refusal('EEXIST');
  const target = there === null || there.isFile() ? await landing(path) : resolve(path);
  const draft = join(dirname(target), `.dryflat-${crypto.randomUUID()}.draft`);
  return { path, content, there, target, draft };
};

/** Writes beside the target, with the rights of what is there, and its owner where that is allowed. */
const writeDraft = async ({ content, there, draft }: Placed): Promise<void> => {
  const file = await open(draft, 'wx', there === null ? 0o666 : 0o600);
  try {
    await file.writeFile(content);
    if (there !== null) {
      await file.chown(there.uid, there.gid).catch(() => {});
      await file.chmod(there.mode & 0o7777);
    }
    await file.sync();
  } finally {
    await file.close();
  }
};

const STOPS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Runs the work, and tells it of a stop by the keyboard or the system; after the work a stop ends the
 * program. Whoever stops twice does not wait.
 */
const heedingStops = async (work: (isStopped: () => boolean) => Promise<void>): Promise<void> => {
  let signal = 0;
  const stop = (_: string, number: number): void => {
    signal = number;
  };
  for (const each of STOPS) process.once(each, stop);
  try {
    await work(() => signal !== 0);
  } finally {
    for (const each of STOPS) process.off(each, stop);
    if (signal !== 0) process.exit(128 + signal);
  }
};

/**
 * Writes files whole, all or none: beside their targets first, then renamed, so that a full disk or a
 * stop half-way leaves what was there. A link stays, and what it leads to is replaced. What is no file, a
 * pipe or a device, has nothing to keep and is written to. Gives back what stood in the way, or null: the
 * system's error, `EEXIST` where a file is there and `replace` is false, `ETWICE` where two of the files
 * are one. (The npm package write-file-atomic 7 takes a write that the disk cut short for a whole one.)
 */
export const writeWhole = async (
  files: readonly NewFile[],
  replace: boolean,
): Promise<NotWritten | null> => {
  const written: string[] = [];
  let at = '';
  try {
    const places: Placed[] = [];
    for (const file of files) {
      [at] = file;
      const place = await placed(file, replace);
      if (places.some(({ target }) => target === place.target)) throw refusal('ETWICE');
      places.push(place);
    }
    const isFile = ({ there }: Placed) => there === null || there.isFile();
    for (const { path, content } of places.filter((place) => !isFile(place))) {
      at = path;
      await writeFile(path, content);
      written.push(path);
    }
    const drafted = places.filter(isFile);
    await heedingStops(async (isStopped) => {
      try {
        for (const place of drafted) {
          at = place.path;
          await writeDraft(place);
          if (isStopped()) return;
        }
        // In one go, so that a stop comes before all of them or after.
        for (const { path, draft, target } of drafted) {
          at = path;
          renameSync(draft, target);
          written.push(path);
        }
      } finally {
        for (const { draft } of drafted) rmSync(draft, { force: true });
      }
    });
    return null;
  } catch (error) {
    return { path: at, error, written };
  }
};
