import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { emptyRecord, findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readPdf } from '../../../packages/paper/src/testing/read-pdf.ts';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

/** One small piece: the quickest plan. */
const socks: GarmentRecord = findExample('ferry-socks')?.record ?? expect.fail('no example');
const input = writeRecord(socks);

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  mkdirSync(join(cwd, 'folder'));
  writeFileSync(join(cwd, 'socks.json'), input);
  writeFileSync(join(cwd, 'there.pdf'), 'mine');
});
afterAll(() => rmSync(cwd, { recursive: true }));

const print = (...options: string[]) => dryflat(['print', 'socks.json', ...options], { cwd });
const pagesOf = async (file: string) => readPdf(readFileSync(join(cwd, file)));
const flat = (text: string) => text.replaceAll(/\s+/g, ' ').replaceAll('.0', '');

it('C13: the page for the mat has the numbers of forecast and the pins of block', async () => {
  expect(print('--pdf', 'mat.pdf')).toMatchObject({
    code: 0,
    out: '',
    err: '2 pages written to mat.pdf.\n',
  });
  const text = flat((await pagesOf('mat.pdf')).map((page) => page.text).join(' '));
  const forecast = JSON.parse(dryflat(['forecast', 'socks.json', '--json'], { cwd }).out);
  for (const { name, span, targetMm, states } of forecast.measurements) {
    const row = text.split(`${name}${span === 'around' ? ', around' : ''} `)[1] ?? '';
    const [wanted, dried] = row.split(' ').map(Number.parseFloat);
    // Printed to the millimetre, from numbers that JSON rounds to a hundredth.
    expect(Math.abs(wanted! * 10 - targetMm)).toBeLessThanOrEqual(0.505);
    expect(Math.abs(dried! * 10 - states.dried.p50Mm)).toBeLessThanOrEqual(0.505);
  }
  const cm = (mm: number) => `${Math.floor(mm + 0.5) / 10}`;
  const block = JSON.parse(dryflat(['block', 'socks.json', '--json'], { cwd }).out);
  let at = 0;
  for (const { order, from } of block.pieces[0].pins) {
    at = text.indexOf(`${cm(from[0].mm)} cm from`, text.indexOf(` ${order} `, at));
    expect(at, `pin ${order}`).toBeGreaterThan(0);
  }
});

it('C2: the same bytes again; C6: and not over a file that is there', () => {
  print('--blank', '--pdf', 'one.pdf');
  print('--blank', '--pdf', 'two.pdf');
  expect(readFileSync(join(cwd, 'one.pdf'))).toEqual(readFileSync(join(cwd, 'two.pdf')));
  expect(print('--blank', '--pdf', 'there.pdf', '--svg', 'new.svg')).toEqual({
    code: 2,
    out: '',
    err: 'there.pdf: file: there is a file of that name. Choose another name, or add --force to replace it.\n',
  });
  expect(readFileSync(join(cwd, 'there.pdf'), 'utf8')).toBe('mine');
  expect(existsSync(join(cwd, 'new.svg'))).toBe(false);
  writeFileSync(join(cwd, 'old.pdf'), 'mine');
  expect(print('--blank', '--pdf', 'old.pdf', '--force').code).toBe(0);
  expect(readFileSync(join(cwd, 'old.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
});

it('C13: at full size, on Letter; SVG is numbered where there are more pages than one', async () => {
  const told = print('--full-size', '--paper', 'letter', '--pdf', 'full.pdf', '--svg', 'full.svg');
  expect(told).toMatchObject({ code: 0, out: '' });
  const pages = await pagesOf('full.pdf');
  expect(pages.length).toBeGreaterThan(2);
  // A thousandth of a millimetre: numbers in a PDF have six digits after the point.
  for (const { widthMm, heightMm } of pages) {
    expect(widthMm).toBeCloseTo(215.9, 3);
    expect(heightMm).toBeCloseTo(279.4, 3);
  }
  const files = readdirSync(cwd).filter((file) => /^full-\d+\.svg$/.test(file));
  expect(files).toHaveLength(pages.length);
  expect(told.err).toBe(
    `${pages.length} pages written to full.pdf and full-1.svg to full-${pages.length}.svg.\n`,
  );
});

it('C13: a measuring sheet needs no number', () => {
  const empty = writeRecord(emptyRecord({ id: 'x', name: 'New', kind: 'hat' }));
  const told = dryflat(['print', '-', '--blank', '--svg', 'hat.svg'], { cwd, input: empty });
  expect(told).toMatchObject({ code: 0, err: '1 page written to hat.svg.\n' });
  expect(readFileSync(join(cwd, 'hat.svg'), 'utf8')).toContain('Measuring sheet: Hat');
});

it.each([
  ['no file to print to', [], '--pdf: no file is named to print to. Add --pdf FILE'],
  ['standard output', ['--pdf', '-'], '--pdf: pages go to a file, not to standard output.'],
  ['another paper', ['--pdf', 'x.pdf', '--paper', 'a5'], '(given: a5). Choose from: a4, letter.'],
  ['another unit', ['--pdf', 'x.pdf', '--units', 'ell'], '(given: ell). Choose from: cm, in.'],
  [
    'two pages at once',
    ['--pdf', 'x.pdf', '--blank', '--full-size'],
    'Leave out --full-size or --blank.',
  ],
  ['a piece of no full size', ['--pdf', 'x.pdf', '--piece', 'sock'], 'Add --full-size.'],
  [
    'a piece that is not there',
    ['--pdf', 'x.pdf', '--full-size', '--piece', 'hood'],
    '(given: hood). Choose from: sock.',
  ],
  [
    'a folder',
    ['--blank', '--pdf', 'folder'],
    'folder: file: this is a folder. Name a file in it.',
  ],
  [
    'one name for both',
    ['--blank', '--pdf', 'x.pdf', '--svg', 'x.pdf'],
    'x.pdf: file: two of the files to write are this one. Give one of them another name.',
  ],
  [
    'a folder that is not there for the second',
    ['--blank', '--pdf', 'x.pdf', '--svg', 'gone/x.svg'],
    'gone/x.svg: file: there is no such folder.',
  ],
  ['a folder that is not there', ['--blank', '--pdf', 'gone/x.pdf'], 'there is no such folder.'],
] as const)('C1: %s is told, and nothing is written', (_, options, err) => {
  const told = print(...options);
  expect(told).toMatchObject({ code: 2, out: '' });
  expect(told.err).toContain(err);
  expect(told.err.trim().split('\n')).toHaveLength(1);
  expect(existsSync(join(cwd, 'x.pdf'))).toBe(false);
});

it.each(['--full-size', '--to-measure'])(
  'C1: %s of a record without sizes says what is missing',
  (option) => {
    const empty = writeRecord(emptyRecord({ id: 'x', name: 'New', kind: 'vest' }));
    const told = dryflat(['print', '-', option, '--pdf', 'x.pdf'], { cwd, input: empty });
    expect(told).toMatchObject({ code: 2, out: '' });
    expect(told.err).toContain('standard input: pattern');
    expect(existsSync(join(cwd, 'x.pdf'))).toBe(false);
  },
);
