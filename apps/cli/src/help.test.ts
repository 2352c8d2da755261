import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES, readRecord } from '@dryflat/record';
import { describe, expect, it } from 'vitest';
import {
  BLOCK,
  CHECK,
  COUNTS,
  commandsIn,
  DRY,
  EXAMPLE,
  FORECAST,
  NEW,
  OVERVIEW,
  PACE,
  PRINT,
  REPORT,
  ROUTES,
  SCHEMA,
} from './help/pages.ts';
import { dryflat, emptyFolder, words } from './testing/dryflat.ts';

const PAGES = {
  OVERVIEW,
  FORECAST,
  BLOCK,
  PRINT,
  REPORT,
  DRY,
  COUNTS,
  ROUTES,
  PACE,
  CHECK,
  NEW,
  EXAMPLE,
  SCHEMA,
};
const COMMANDS = [
  'forecast',
  'block',
  'print',
  'report',
  'dry',
  'counts',
  'routes',
  'pace',
  'check',
  'new',
  'example',
  'schema',
];

describe.each(Object.entries(PAGES))('the page %s', (_, page) => {
  it('C3: its command lines run, in order, in an empty folder', () => {
    const cwd = emptyFolder();
    const lines = commandsIn(page);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      const [name, ...rest] = words(line);
      expect(name).toBe('dryflat');
      expect({ line, ...dryflat(rest, { cwd }) }).toMatchObject({ line, code: 0 });
    }
    rmSync(cwd, { recursive: true });
  });

  it('keeps within 80 columns', () => {
    expect(page.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
});

it.each(COMMANDS)('%s: its page with --help and after help', (command) => {
  const page = dryflat([command, '--help']);
  expect(page).toMatchObject({ code: 0, err: '' });
  expect(page.out).toContain(`Usage: dryflat ${command}`);
  expect(page.out).toContain('$ dryflat ');
  expect(dryflat(['help', command])).toEqual(page);
});

it('the overview names every state, every exit code and every command', () => {
  const { code, out } = dryflat(['--help']);
  expect(code).toBe(0);
  for (const word of ['as knit', 'wet', 'dried', 'worn', 'rewashed', ...COMMANDS])
    expect(out).toContain(`  ${word}`);
  expect(out).toMatch(/Exit codes: 0 .*; 2 .*; 1 /s);
});

it('example lists all, and prints each as a file that reads back', () => {
  const list = dryflat(['example']).out;
  for (const { slug, record } of EXAMPLES) {
    expect(list).toContain(slug);
    const read = readRecord(dryflat(['example', slug]).out);
    expect(read.ok && read.value.record).toEqual(record);
  }
});

it('new makes a record of the kind and name, with its usual measurements and no number', () => {
  const cwd = emptyFolder();
  dryflat(['new', '--kind', 'hat', '--name', 'Tide hat', '-o', 'hat.json'], { cwd });
  const read = readRecord(readFileSync(join(cwd, 'hat.json'), 'utf8'));
  if (!read.ok) expect.fail('the new record does not read');
  const { kind, name, pattern } = read.value.record;
  expect({ kind, name }).toEqual({ kind: 'hat', name: 'Tide hat' });
  expect(pattern.measurements.map(({ landmark }) => landmark)).toContain('brim');
  expect(pattern.measurements.flatMap(({ values }) => values)).toEqual([]);
  rmSync(cwd, { recursive: true });
});

it('schema prints a JSON Schema that names the format', () => {
  const schema = JSON.parse(dryflat(['schema']).out);
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(schema.properties.format.const).toBe('dryflat-garment');
});
