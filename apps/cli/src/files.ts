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

/** What stands in the way of a new file of that name, or null. */
const standing = async (path: string, surroundings: Surroundings): Promise<Fault | null> => {
  try {
    await surroundings.read(path);
    return systemFault({ code: 'EEXIST' }, WRITING);
  } catch (error) {
    const folder = (error as NodeJS.ErrnoException).code === 'EISDIR';
    return folder ? systemFault(error, WRITING) : null;
  }
};

/** Writes several files, or where one of them is there already and may not be replaced, none. */
export const saveAll = async (
  files: readonly (readonly [path: string, content: string | Uint8Array])[],
  replace: boolean,
  surroundings: Surroundings,
): Promise<NotSaved | null> => {
  for (const [path] of replace ? [] : files) {
    const fault = await standing(path, surroundings);
    if (fault !== null) return { path, faults: [fault] };
  }
  for (const [path, content] of files) {
    const saved = await save(path, content, replace, surroundings);
    if (!saved.ok) return { path, faults: saved.faults };
  }
  return null;
};
