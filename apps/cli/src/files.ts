import { dirname } from 'node:path';
import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import { type ReadRecord, readRecord } from '@dryflat/record';
import type { Surroundings } from './surroundings.ts';

/** How a file is called in messages. */
export const called = (path: string): string => (path === '-' ? 'standard input' : path);

const READING: Readonly<Record<string, readonly [problem: string, mend: string]>> = {
  ENOENT: [
    'there is no such file',
    'Check the name, or make one: dryflat example waistcoat -o FILE.',
  ],
  ENOTDIR: ['a part of the path is not a folder', 'Check the name.'],
  ENAMETOOLONG: ['the name is too long', 'Check the name.'],
  EISDIR: ['this is a folder', 'Name a file in it.'],
  EACCES: [
    'the file may not be read',
    'Change its permissions, or copy it to a place of your own.',
  ],
};

const WRITING: Readonly<Record<string, readonly [problem: string, mend: string]>> = {
  EEXIST: ['there is a file of that name', 'Choose another name, or add --force to replace it.'],
  EISDIR: ['this is a folder', 'Name a file in it.'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter one.'],
  ENOENT: ['there is no such folder', 'Make the folder first, or choose another.'],
  ENOTDIR: ['a part of the path is not a folder', 'Choose another path.'],
  EACCES: ['the file may not be written', 'Choose a place that you may write to.'],
  EROFS: ['the file may not be written', 'Choose a place that you may write to.'],
};

/** The system's error as a fault; anything that is not one of these is a bug and is thrown on. */
const systemFault = (
  error: unknown,
  known: Readonly<Record<string, readonly [string, string]>>,
): Fault => {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  const [problem, mend] = known[code] ?? [];
  if (problem === undefined || mend === undefined) throw error;
  return { code: `file-${code.toLowerCase()}`, field: 'file', given: '', problem, mend };
};

/** Reads the garment record in a file; every fault of its structure is reported. */
export const openRecord = async (
  path: string,
  surroundings: Surroundings,
): Promise<Result<ReadRecord>> => {
  try {
    return readRecord(await surroundings.read(path));
  } catch (error) {
    return fail(systemFault(error, READING));
  }
};

/** Writes a content to a new file, or over an old one with `replace`. */
export const save = async (
  path: string,
  content: string | Uint8Array,
  replace: boolean,
  surroundings: Surroundings,
): Promise<Result<null>> => {
  try {
    await surroundings.write(path, content, replace);
    return ok(null);
  } catch (error) {
    return fail(systemFault(error, WRITING));
  }
};

export interface NotSaved {
  readonly path: string;
  readonly faults: readonly Fault[];
}

/** The system's code for what reading a path ends with; null where it is read. */
const codeOf = async (path: string, { read }: Surroundings): Promise<string | null> => {
  try {
    await read(path);
    return null;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code ?? '';
  }
};

/** What stands in the way of writing a file of that name, or null. */
const standing = async (
  path: string,
  replace: boolean,
  surroundings: Surroundings,
): Promise<Fault | null> => {
  const code = await codeOf(path, surroundings);
  if (code === null) return replace ? null : systemFault({ code: 'EEXIST' }, WRITING);
  if (code !== 'ENOENT') return code in WRITING ? systemFault({ code }, WRITING) : null;
  // A folder that is there cannot be read as a file, and says so.
  const folder = await codeOf(dirname(path), surroundings);
  return folder === 'ENOENT' ? systemFault({ code: 'ENOENT' }, WRITING) : null;
};

/** Writes several files; none where one has no folder, or is there already and may not be replaced. */
export const saveAll = async (
  files: readonly (readonly [path: string, content: string | Uint8Array])[],
  replace: boolean,
  surroundings: Surroundings,
): Promise<NotSaved | null> => {
  for (const [path] of files) {
    const fault = await standing(path, replace, surroundings);
    if (fault !== null) return { path, faults: [fault] };
  }
  for (const [path, content] of files) {
    const saved = await save(path, content, replace, surroundings);
    if (!saved.ok) return { path, faults: saved.faults };
  }
  return null;
};
