import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { emptyRecord, findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

const waistcoat: GarmentRecord = findExample('waistcoat')?.record ?? expect.fail('no example');

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  writeFileSync(join(cwd, 'waistcoat.json'), writeRecord(waistcoat));
});
afterAll(() => rmSync(cwd, { recursive: true }));

const report = (...options: string[]) => dryflat(['report', 'waistcoat.json', ...options], { cwd });

it('C14: printed as Markdown, its numbers those of forecast', () => {
  const told = report();
  expect(told).toMatchObject({ code: 0, err: '' });
  expect(report('--markdown', '-')).toEqual(told);
  const forecast = JSON.parse(dryflat(['forecast', 'waistcoat.json', '--json'], { cwd }).out);
  for (const { name, targetMm, states } of forecast.measurements) {
    const line = told.out.split('\n').find((each) => each.startsWith(`| ${name}`)) ?? '';
    const [wanted, dried] = line.split(' | ').slice(1).map(Number.parseFloat);
    // Printed to the millimetre, from numbers that JSON rounds to a hundredth.
    expect(Math.abs(wanted! * 10 - targetMm)).toBeLessThanOrEqual(0.505);
    expect(Math.abs(dried! * 10 - states.dried.p50Mm)).toBeLessThanOrEqual(0.505);
  }
});

it('C14: the wearer is left out unless asked for', () => {
  const [given = ''] = waistcoat.wearer.name.split(' ');
  expect(waistcoat.name).toContain(given);
  expect(report().out).not.toContain(given);
  expect(report().out).not.toContain('## Body');
  const told = report('--with-body').out;
  expect(told).toContain(waistcoat.wearer.name);
  expect(told).toContain('## Body');
});

it('C14: written to the files that are named, with the same bytes each time', () => {
  const told = report('--html', 'r.html', '--pdf', 'r.pdf', '--markdown', 'r.md');
  expect(told).toEqual({
    code: 0,
    out: '',
    err: 'Written to r.html.\nWritten to r.pdf.\nWritten to r.md.\n',
  });
  expect(readFileSync(join(cwd, 'r.html'), 'utf8')).toMatch(/^<!doctype html>/);
  expect(readFileSync(join(cwd, 'r.md'), 'utf8')).toBe(report().out);
  report('--pdf', 'again.pdf');
  expect(readFileSync(join(cwd, 'again.pdf'))).toEqual(readFileSync(join(cwd, 'r.pdf')));
});

it('C6: where one of the files is there, none is written', () => {
  writeFileSync(join(cwd, 'mine.pdf'), 'mine');
  const told = report('--html', 'new.html', '--pdf', 'mine.pdf');
  expect(told).toMatchObject({ code: 2, out: '' });
  expect(told.err).toContain('mine.pdf: file: there is a file of that name.');
  expect(existsSync(join(cwd, 'new.html'))).toBe(false);
});

it.each([
  ['HTML to standard output', ['--html', '-'], '--html: it goes to a file, not to standard output'],
  ['PDF to standard output', ['--pdf', '-'], '--pdf: it goes to a file, not to standard output'],
  ['another paper', ['--paper', 'a5'], '(given: a5). Choose from: a4, letter.'],
] as const)('C1: %s is told', (_, options, err) => {
  const told = report(...options);
  expect(told).toMatchObject({ code: 2, out: '' });
  expect(told.err).toContain(err);
});

it('C1: a record that no forecast can be asked of says what is missing', () => {
  const input = writeRecord(emptyRecord({ id: 'x', name: 'New', kind: 'vest' }));
  const told = dryflat(['report', '-'], { cwd, input });
  expect(told).toMatchObject({ code: 2, out: '' });
  expect(told.err).toContain('standard input: pattern');
});
