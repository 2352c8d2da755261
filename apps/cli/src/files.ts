import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import {
  faultsOf,
  marked,
  markedText,
  mustBeMended,
  type ReadRecord,
  readRecord,
} from '@dryflat/record';
import { refused } from './faults.ts';
import type { Ending, NewFile, Surroundings } from './surroundings.ts';

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
  'there is no space left on the disk',
  'Free some space, or choose another disk.',
];

const WRITING: Readonly<Record<string, Said>> = {
  ...EITHER,
  ETWICE: ['two of the files to write are this one', 'Give one of them another name.'],
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

/** Says of files that they were written. */
export const written = (paths: readonly string[], what = 'Written'): string =>
  paths.map((path) => `${what} to ${markedText(path)}.\n`).join('');

/** Writes files, over old ones with `force`, all or none: null, or how a command ends that could not. */
export const save = async (
  files: readonly NewFile[],
  { force = false }: { readonly force?: boolean },
  surroundings: Surroundings,
): Promise<Ending | null> => {
  const failed = await surroundings.write(files, force);
  if (failed === null) return null;
  const ending = refused(markedText(failed.path), [systemFault(failed.error, WRITING)]);
  return { ...ending, err: ending.err + written(failed.written) };
};
