import { spawnSync } from 'node:child_process';
import { closeSync, openSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { findExample, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runProgram } from './program.ts';
import type { Surroundings } from './surroundings.ts';
import { BIN, dryflat, emptyFolder } from './testing/dryflat.ts';

const TEXT = writeRecord(findExample('hayloft-pullover')?.record ?? expect.fail('no example'));

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  symlinkSync('loop.json', join(cwd, 'loop.json'));
  writeFileSync(join(cwd, 'good.json'), TEXT);
});
afterAll(() => rmSync(cwd, { recursive: true }));

const refusal = (code: string) => Object.assign(new Error(code), { code });

/** A machine on which one thing goes wrong, as the system words it. */
const failing = (what: 'read' | 'write', code: string): Surroundings => {
  return {
    read: () => (what === 'read' ? Promise.reject(refusal(code)) : Promise.resolve(TEXT)),
    write: async ([[path] = ['']]) =>
      what === 'write' ? { path, error: refusal(code), written: [] } : null,
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

  const NAME = 'Red\u001b[31m\u0007\n\u202eback\u061c';

  it.each([
    ['a new record', ['new', '-o', NAME]],
    ['an example', ['example', 'waistcoat', '-o', NAME]],
    ['a picture', ['block', '-', '--svg', NAME]],
    ['a picture that hangs on the size', ['block', 'sizeless', '--svg', NAME]],
    ['a calendar of drying', ['dry', '-', '--calendar', NAME]],
    ['a calendar of work', ['pace', '-', '--calendar', NAME]],
    ['a page', ['print', '-', '--blank', '--svg', NAME]],
    ['a report', ['report', '-', '--html', NAME]],
    ['a file that cannot be read', ['check', NAME]],
    ['an unknown command', [NAME]],
    ['an unknown option', ['check', `--${NAME}`]],
    ['a choice', ['forecast', '-', '--units', NAME]],
    ['a size', ['forecast', '-', '--size', NAME]],
    ['a piece', ['counts', '-', '--piece', NAME]],
    ['a day', ['pace', '-', '--today', NAME]],
    ['an example that is none', ['example', NAME]],
  ])('C19: marks for them in %s that the command line names', async (_, line) => {
    const { pattern, ...rest } = JSON.parse(TEXT);
    const sizeless = JSON.stringify({ ...rest, pattern: { ...pattern, chosen: undefined } });
    const { out, err } = await runProgram(line, {
      ...failing('read', 'ENOENT'),
      read: async (path) => {
        if (path === 'sizeless') return sizeless;
        return path === '-' ? TEXT : Promise.reject(refusal('ENOENT'));
      },
      font: (file) => readFile(createRequire(import.meta.url).resolve(file)),
    });
    expect(err).toContain('Red␛[31m␇␊‹U+202E›back‹U+061C›');
    expect(out + err).not.toMatch(/(?!\n)[\p{Cc}\u202a-\u202e\u061c]/u);
    expect(err.match(/\n/g)).toHaveLength(1);
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
