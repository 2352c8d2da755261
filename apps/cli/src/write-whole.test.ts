import { spawn, spawnSync } from 'node:child_process';
import fs, {
  chmodSync,
  chownSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { constants } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { findExample, writeRecord } from '@dryflat/record';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EXTREME_RECORDS } from './mutated/extreme-records.ts';
import { BIN, dryflat, emptyFolder } from './testing/dryflat.ts';
import { writeWhole } from './write-whole.ts';

const TEXT = writeRecord(findExample('hayloft-pullover')?.record ?? expect.fail('no example'));

let cwd: string;
beforeEach(() => {
  cwd = emptyFolder();
});
afterEach(() => {
  vi.restoreAllMocks();
  syncBuiltinESMExports();
  rmSync(cwd, { recursive: true });
});

const inFolder = (name: string): string => join(cwd, name);

const put = (name: string, text: string): string => {
  writeFileSync(inFolder(name), text);
  return inFolder(name);
};

/** Every file of the folder with what is in it. */
const there = (): Record<string, string> =>
  Object.fromEntries(
    readdirSync(cwd).map((name) => {
      const isFile = statSync(inFolder(name), { throwIfNoEntry: false })?.isFile();
      return [name, isFile ? readFileSync(inFolder(name), 'utf8') : 'no file'];
    }),
  );

/** A content at whose reading something happens: half of it is written by then. */
const meanwhile = (happens: () => void): Uint8Array =>
  (async function* () {
    yield 'half';
    happens();
    yield ' and half';
  })() as unknown as Uint8Array;

/** Processor time that a program has used; a clock of proc(5) ticks a hundred times a second. */
const secondsOf = (pid = 0): number => {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return Number(fields[11]) / 100;
};

describe('files are written beside and renamed', () => {
  it('C18: a disk that is full half-way leaves every old file, byte for byte, and nothing beside them', () => {
    dryflat(['--version']);
    put('good.json', TEXT);
    put('r.pdf', 'old');
    put('r.html', 'old too');
    const before = there();
    // A file may grow to 8 KiB: the HTML fits, the PDF does not.
    const line = 'ulimit -f 8; exec node "$0" report good.json --force --html r.html --pdf r.pdf';
    const ran = spawnSync('bash', ['-c', line, BIN], { cwd, encoding: 'utf8' });
    expect(ran.stderr).toBe(
      'r.pdf: file: there is no space left on the disk. Free some space, or choose another disk.\n',
    );
    expect(ran.status).toBe(2);
    expect(there()).toEqual(before);
  });

  it('C18: a write that fails half-way leaves the old ones, and nothing beside them', async () => {
    const [one, other] = [put('one', 'old'), put('other', 'old')];
    const fails = meanwhile(() => {
      throw new Error('half-way');
    });
    const files = [[one, 'new'] as const, [other, fails] as const];
    const failed = await writeWhole(files, true);
    expect(failed).toMatchObject({ path: other, error: { message: 'half-way' }, written: [] });
    expect(there()).toEqual({ one: 'old', other: 'old' });
  });

  it('C18: where some are renamed and one cannot be, it is told which are written', async () => {
    const [one, other] = [put('one', 'old'), inFolder('other')];
    const blocks = meanwhile(() => mkdirSync(other));
    const files = [[one, 'new'] as const, [other, blocks] as const];
    const failed = await writeWhole(files, true);
    expect(failed).toMatchObject({ path: other, error: { code: 'EISDIR' }, written: [one] });
    expect(there()).toEqual({ one: 'new', other: 'no file' });
  });

  it.each([
    ['640', 0],
    ['666', 0],
    ['604', 65_534],
  ])(
    'C18: the new one has the rights %s and the owner of the old one, behind a link too',
    async (mode, id) => {
      const file = put('old', 'old');
      if (process.getuid?.() === 0) chownSync(file, id, id);
      chmodSync(file, mode);
      const { uid, gid } = statSync(file);
      symlinkSync('old', inFolder('link'));
      expect(await writeWhole([[inFolder('link'), 'new']], true)).toBe(null);
      expect(there()).toEqual({ old: 'new', link: 'new' });
      expect(lstatSync(inFolder('link')).isSymbolicLink()).toBe(true);
      const now = statSync(file);
      expect((now.mode & 0o7777).toString(8)).toBe(mode);
      expect([now.uid, now.gid]).toEqual([uid, gid]);
    },
  );

  it('C18: a link to what is not there yet stays one', async () => {
    mkdirSync(inFolder('folder'));
    symlinkSync('folder/new', inFolder('link'));
    expect(await writeWhole([[inFolder('link'), 'new']], false)).toBe(null);
    expect(lstatSync(inFolder('link')).isSymbolicLink()).toBe(true);
    expect(readFileSync(inFolder('folder/new'), 'utf8')).toBe('new');
  });

  it('C18: a device is written to and stays one', async () => {
    expect(await writeWhole([['/dev/null', 'new']], true)).toBe(null);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  it.each([
    ['', 'EISDIR'],
    ['none/new', 'ENOENT'],
    ['none/', 'ENOENT'],
    ['old/new', 'ENOTDIR'],
    ['old', 'EEXIST'],
  ])(
    'C6: a folder, a place that is none and a file that is there are refused: “%s”',
    async (name, code) => {
      put('old', 'old');
      const path = inFolder(name);
      const failed = await writeWhole(
        [
          [inFolder('new'), 'new'],
          [path, 'new'],
        ],
        false,
      );
      expect(failed).toMatchObject({ path, error: { code }, written: [] });
      expect(there()).toEqual({ old: 'old' });
    },
  );

  it.each([
    ['./x', () => {}],
    ['link', () => symlinkSync('x', inFolder('link'))],
    ['here/x', () => symlinkSync('.', inFolder('here'))],
  ])('C14: two outputs that are one file write nothing: x and %s', (other, make) => {
    put('good.json', TEXT);
    make();
    const before = there();
    const line = ['report', 'good.json', '--html', 'x', '--markdown', other];
    expect(dryflat(line, { cwd })).toEqual({
      code: 2,
      out: '',
      err: `${other}: file: two of the files to write are this one. Give one of them another name.\n`,
    });
    expect(there()).toEqual(before);
  });

  it('C14: an output that cannot be begun leaves none of the others', () => {
    put('good.json', TEXT);
    // A folder in which nobody may make a file, the system’s administrator included.
    const line = ['report', 'good.json', '--html', 'ok.html', '--markdown', '/proc/bad.md'];
    const { code, err } = dryflat(line, { cwd });
    expect({ code, err }).toEqual({
      code: 2,
      err: '/proc/bad.md: file: there is no such folder. Make the folder first, or choose another.\n',
    });
    expect(there()).toEqual({ 'good.json': TEXT });
  });
});

describe('a stop', () => {
  /** Has the program stopped at a moment of its writing: what is written meanwhile, by what is there after it. */
  const MOMENTS = {
    'as a draft is opened': (stop: () => void) => {
      const { open } = fs.promises;
      vi.spyOn(fs.promises, 'open').mockImplementationOnce((...given) => {
        stop();
        return open(...given);
      });
      return 'new';
    },
    'half-way': meanwhile,
    'as all are renamed': (stop: () => void) => {
      const { renameSync } = fs;
      vi.spyOn(fs, 'renameSync').mockImplementation((from, to) => {
        renameSync(from, to);
        if (to === inFolder('two')) stop();
      });
      return 'new';
    },
  };

  it.each([
    ['SIGINT', 'as a draft is opened', 'old'],
    ['SIGINT', 'half-way', 'old'],
    ['SIGTERM', 'half-way', 'old'],
    ['SIGHUP', 'half-way', 'old'],
    ['SIGINT', 'as all are renamed', 'new'],
  ] as const)(
    'C18: %s %s ends with 128 and its number: no draft, and all is %s',
    async (signal, moment, left) => {
      const number = constants.signals[signal];
      const exit = vi.spyOn(process, 'exit').mockReturnValue(undefined as never);
      const others = process.listeners(signal);
      const stop = () => {
        for (const heeds of process.listeners(signal))
          if (!others.includes(heeds)) (heeds as (...given: unknown[]) => void)(signal, number);
      };
      const content = MOMENTS[moment](stop);
      syncBuiltinESMExports();
      await writeWhole(
        [
          [put('one', 'old'), content],
          [put('two', 'old'), 'new'],
        ],
        true,
      );
      expect(exit.mock.calls).toEqual([[128 + number]]);
      expect(there()).toEqual({ one: left, two: left });
      expect(process.listeners(signal)).toEqual(others);
    },
  );

  it('C18: Ctrl-C ends a calculation at once, and nothing is written', async () => {
    const [, make] = EXTREME_RECORDS.find(([what]) => what === '1,000 moved pins') ?? expect.fail();
    const running = spawn('node', [BIN, 'block', '-', '--svg', 'long.svg'], { cwd });
    const ended = new Promise((resolve) => running.once('exit', (_, signal) => resolve(signal)));
    // Longer than what a pipe holds, so that its end is taken by a program that reads.
    const text = `${JSON.stringify(make())}${' '.repeat(2 ** 20)}`;
    await new Promise((resolve) => running.stdin.end(text, () => resolve(null)));
    // A record is read and looked through in less than a second of the processor; the plan takes about ten.
    const from = secondsOf(running.pid);
    while (secondsOf(running.pid) < from + 2) await wait(20);
    const asked = performance.now();
    running.kill('SIGINT');
    expect(await ended).toBe('SIGINT');
    expect(performance.now() - asked).toBeLessThan(1_000);
    expect(there()).toEqual({});
  });
});
