import { spawn, spawnSync } from 'node:child_process';
import {
  closeSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { findExample, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EXTREME_RECORDS } from './mutated/extreme-records.ts';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';
import { BIN, dryflat, emptyFolder } from './testing/dryflat.ts';
import { writeWhole } from './write-whole.ts';

const TEXT = writeRecord(findExample('hayloft-pullover')?.record ?? expect.fail('no example'));

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  symlinkSync('loop.json', join(cwd, 'loop.json'));
  writeFileSync(join(cwd, 'good.json'), TEXT);
  mkdirSync(join(cwd, 'folder'));
});
afterAll(() => rmSync(cwd, { recursive: true }));

/** A machine on which one thing goes wrong, as the system words it. */
const failing = (what: 'read' | 'write', code: string): Surroundings => {
  const fails = () => Promise.reject(Object.assign(new Error(code), { code }));
  return {
    read: what === 'read' ? fails : () => Promise.resolve(TEXT),
    look: (path) =>
      path === '.'
        ? Promise.resolve('folder')
        : Promise.reject(Object.assign(new Error(), { code: 'ENOENT' })),
    write: what === 'write' ? fails : () => Promise.resolve(),
    font: () => Promise.reject(new Error('no font is asked for')),
    random: () => 0,
    today: () => '2031-01-13',
    colours: false,
  };
};

const CODES = ['EACCES', 'EPERM', 'ELOOP', 'EIO', 'EMFILE', 'ENAMETOOLONG', 'EBUSY', 'EOVERFLOW'];

describe('what the system says', () => {
  it.each(CODES)(
    'C17: reading that ends with %s is told of the file, with a mend',
    async (code) => {
      const {
        code: ended,
        out,
        err,
      } = await runProgram(['check', 'a.json'], failing('read', code));
      expect({ ended, out }).toEqual({ ended: 2, out: '' });
      expect(err).toMatch(/^a\.json: file: [^\n]+\. [A-Z][^\n]+\.\n$/);
    },
  );

  it.each([...CODES, 'ENOSPC', 'EDQUOT', 'EROFS'])(
    'C17: writing that ends with %s is told of the file, with a mend',
    async (code) => {
      const line = ['report', 'a.json', '--html', 'b.html'];
      const { code: ended, out, err } = await runProgram(line, failing('write', code));
      expect({ ended, out }).toEqual({ ended: 2, out: '' });
      expect(err).toMatch(/^b\.html: file: [^\n]+\. [A-Z][^\n]+\.\n$/);
    },
  );

  it('C17: a link that leads back to itself', () => {
    expect(dryflat(['forecast', 'loop.json'], { cwd }).err).toBe(
      'loop.json: file: the name is a link that leads back to itself. Name the file itself, not the link.\n',
    );
    const { code, err } = dryflat(['example', 'waistcoat', '-o', 'loop.json', '--force'], { cwd });
    expect({ code, err }).toEqual({
      code: 2,
      err: 'loop.json: file: the name is a link that leads back to itself. Name the file itself, not the link.\n',
    });
  });

  it('C17: a file without end is given up', () => {
    expect(dryflat(['check', '/dev/zero'], { cwd })).toEqual({
      code: 2,
      out: '',
      err: '/dev/zero: file: it is larger than any garment record. Choose a file that was exported as a garment record.\n',
    });
  });

  it('C17: standard output that takes nothing', () => {
    const full = openSync('/dev/full', 'w');
    const ran = spawnSync('node', [BIN, 'forecast', 'good.json'], {
      cwd,
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    closeSync(full);
    expect(ran.status).toBe(2);
    expect(ran.stderr).toBe(
      'standard output: it could not be written (ENOSPC). Nothing else was.\n',
    );
  });
});

describe('files are written beside and renamed', () => {
  const kept = (name: string, text = 'old') => {
    const file = join(cwd, name);
    writeFileSync(file, text, { mode: 0o640 });
    return file;
  };

  it('C18: what is not written whole leaves the old one, and nothing beside it', async () => {
    const file = kept('old.json');
    const before = readdirSync(cwd);
    const broken = { toString: () => expect.fail('unused') } as unknown as Uint8Array;
    await expect(writeWhole(file, broken, true)).rejects.toThrow();
    expect(readFileSync(file, 'utf8')).toBe('old');
    expect(readdirSync(cwd)).toEqual(before);
  });

  it('C18: the new one has the rights of the old one, behind a link too', async () => {
    const file = kept('rights.json');
    symlinkSync('rights.json', join(cwd, 'link.json'));
    await writeWhole(join(cwd, 'link.json'), 'new', true);
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(statSync(file).mode & 0o777).toBe(0o640);
  });

  it('C18: a device is written to and stays one', async () => {
    await writeWhole('/dev/null', 'new', true);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  it('C18: a folder is not written over', async () => {
    await expect(writeWhole(join(cwd, 'folder'), 'new', true)).rejects.toMatchObject({
      code: 'EISDIR',
    });
  });

  it('C14: two outputs of one name write nothing', () => {
    const before = readdirSync(cwd);
    const line = ['report', 'good.json', '--html', 'x', '--markdown', './x'];
    expect(dryflat(line, { cwd })).toEqual({
      code: 2,
      out: '',
      err: './x: file: two of the files to write have this name (given: ./x). Give one of them another.\n',
    });
    expect(readdirSync(cwd)).toEqual(before);
  });
});

it('C18: Ctrl-C ends a calculation at once, and nothing is written', async () => {
  const [, make] = EXTREME_RECORDS.find(([what]) => what === '1,000 moved pins') ?? expect.fail();
  writeFileSync(join(cwd, 'long.json'), JSON.stringify(make()));
  const before = readdirSync(cwd);
  const running = spawn('node', [BIN, 'block', 'long.json', '--svg', 'long.svg'], { cwd });
  const ended = new Promise((resolve) => running.once('exit', (_, signal) => resolve(signal)));
  // It takes about ten seconds, of which these are well within the calculation.
  await new Promise((resolve) => setTimeout(resolve, 2_000));
  const asked = performance.now();
  running.kill('SIGINT');
  expect(await ended).toBe('SIGINT');
  expect(performance.now() - asked).toBeLessThan(1_000);
  expect(readdirSync(cwd)).toEqual(before);
});

describe('signs that steer a terminal', () => {
  const named = (name: string) => JSON.stringify({ ...JSON.parse(TEXT), name, id: name });

  it.each([
    ['check', ['check', '-']],
    ['forecast', ['forecast', '-', '--draws', '1000']],
    ['report', ['report', '-']],
    ['dry', ['dry', '-']],
  ] as const)('C19: %s shows marks for them', (_, line) => {
    const input = named('Red\u001b[31m\u0007\u202eback\u0085\u2028');
    const { out, err } = dryflat(line, { cwd, input });
    expect(out + err).not.toMatch(/(?!\n)[\p{Cc}\p{Zl}\u202a-\u202e]/u);
    if (line[0] === 'forecast') expect(out).toContain('Red␛[31m␇‹U+202E›back‹U+0085›‹U+2028›');
  });

  it('C19: in a picture and a page too', () => {
    const { pattern, ...rest } = JSON.parse(TEXT);
    const input = JSON.stringify({ ...rest, pattern: { ...pattern, name: 'a\u0000b\u001bc' } });
    const { code } = dryflat(['print', '-', '--blank', '--svg', 'marks.svg'], { cwd, input });
    expect(code).toBe(0);
    const svg = readFileSync(join(cwd, 'marks.svg'), 'utf8');
    expect(svg).toContain('a␀b␛c');
    expect(svg).not.toMatch(/(?!\n)\p{Cc}/u);
  });
});
