import { dirname, resolve } from 'node:path';
import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import {
  faultsOf,
  marked,
  markedText,
  mustBeMended,
  type ReadRecord,
  readRecord,
} from '@dryflat/record';
import type { Surroundings } from './surroundings.ts';

/** How a file is called in messages. */
export const called = (path: string): string =>
  path === '-' ? 'standard input' : markedText(path);

type Said = readonly [problem: string, mend: string];

/** What the system says of a file, whatever was to be done with it. */
const EITHER: Readonly<Record<string, Said>> = {
  EISDIR: ['this is a folder', 'Name a file in it.'],
  EMFILE: ['too many files are open on this machine', 'Close some programs and try again.'],
  ENFILE: ['too many files are open on this machine', 'Close some programs and try again.'],
  EIO: ['the disk could not be read or written', 'Try again, or use another disk.'],
  ELOOP: ['the name is a link that leads back to itself', 'Name the file itself, not the link.'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter one.'],
};

const READING: Readonly<Record<string, Said>> = {
  ...EITHER,
  ENOENT: [
    'there is no such file',
    'Check the name, or make one: dryflat example waistcoat -o FILE.',
  ],
  ENOTDIR: ['a part of the path is not a folder', 'Check the name.'],
  ENAMETOOLONG: ['the name is too long', 'Check the name.'],
  EACCES: [
    'the file may not be read',
    'Change its permissions, or copy it to a place of your own.',
  ],
  EPERM: ['the file may not be read', 'Change its permissions, or copy it to a place of your own.'],
  EFBIG: [
    'it is larger than any garment record',
    'Choose a file that was exported as a garment record.',
  ],
};

const NOT_WRITABLE: Said = ['the file may not be written', 'Choose a place that you may write to.'];
const NO_SPACE: Said = [
  'there is no space left on the disk, and nothing was changed',
  'Free some space, or choose another disk.',
];

const WRITING: Readonly<Record<string, Said>> = {
  ...EITHER,
  EEXIST: ['there is a file of that name', 'Choose another name, or add --force to replace it.'],
  ENOENT: ['there is no such folder', 'Make the folder first, or choose another.'],
  ENOTDIR: ['a part of the path is not a folder', 'Choose another path.'],
  EACCES: NOT_WRITABLE,
  EPERM: NOT_WRITABLE,
  EROFS: NOT_WRITABLE,
  EBUSY: ['another program holds the file', 'Close that program, or choose another name.'],
  ENOSPC: NO_SPACE,
  EDQUOT: NO_SPACE,
  EFBIG: NO_SPACE,
};

/** The system's error as a fault; one that the system did not make is a bug and is thrown on. */
const systemFault = (error: unknown, known: Readonly<Record<string, Said>>): Fault => {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined || !/^E[A-Z0-9]+$/.test(code)) throw error;
  const [problem, mend] = known[code] ?? [
    `the system would not do it (${code})`,
    'Try another file or another place.',
  ];
  return { code: `file-${code.toLowerCase()}`, field: 'file', given: '', problem, mend };
};

/** Reads the garment record in a file as it stands; every fault of its structure is reported. */
export const readFileRecord = async (
  path: string,
  surroundings: Surroundings,
): Promise<Result<ReadRecord>> => {
  try {
    return readRecord(await surroundings.read(path));
  } catch (error) {
    return fail(systemFault(error, READING));
  }
};

/**
 * Opens the garment record in a file for a command: one gate for all of them. What `check` calls a
 * fault ends each of them with the same lines; control characters in what was typed become marks.
 */
export const openRecord = async (
  path: string,
  surroundings: Surroundings,
): Promise<Result<ReadRecord>> => {
  const read = await readFileRecord(path, surroundings);
  if (!read.ok) return read;
  const faults = faultsOf(read.value.record).filter(mustBeMended);
  if (faults.length > 0) return fail(...faults);
  const { record, notices } = read.value;
  const said = notices.map((notice) => markedText(notice));
  return ok({ ...read.value, record: marked(record), notices: said });
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

/** What lies at a path, or the system's code for why nothing does. */
const lookedAt = async (path: string, { look }: Surroundings): Promise<string> => {
  try {
    return await look(path);
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
  const there = await lookedAt(path, surroundings);
  if (there === 'file') return replace ? null : systemFault({ code: 'EEXIST' }, WRITING);
  if (there === 'folder') return systemFault({ code: 'EISDIR' }, WRITING);
  if (there !== 'ENOENT') return systemFault({ code: there }, WRITING);
  const around = await lookedAt(dirname(path), surroundings);
  if (around === 'folder') return null;
  return systemFault({ code: around === 'file' ? 'ENOTDIR' : around }, WRITING);
};

const sameName = (path: string): Fault => ({
  code: 'option-unusable',
  field: 'file',
  given: path,
  problem: 'two of the files to write have this name',
  mend: 'Give one of them another.',
});

/**
 * Writes several files; none where two have one name, where one has no folder, or is there already and
 * may not be replaced.
 */
export const saveAll = async (
  files: readonly (readonly [path: string, content: string | Uint8Array])[],
  replace: boolean,
  surroundings: Surroundings,
): Promise<NotSaved | null> => {
  const places = files.map(([path]) => resolve(path));
  for (const [k, [path]] of files.entries()) {
    const twice = places.indexOf(resolve(path)) < k;
    const fault = twice ? sameName(path) : await standing(path, replace, surroundings);
    if (fault !== null) return { path, faults: [fault] };
  }
  for (const [path, content] of files) {
    const saved = await save(path, content, replace, surroundings);
    if (!saved.ok) return { path, faults: saved.faults };
  }
  return null;
};
