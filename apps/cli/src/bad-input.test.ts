import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { findExample, type GarmentRecord, writeRecord } from '@dryflat/record';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

const waistcoat = (): GarmentRecord =>
  structuredClone(findExample('waistcoat')?.record ?? expect.fail('no example'));

/** The waistcoat's file after some damage to it. */
const damaged = (damage: (record: GarmentRecord) => void): string => {
  const record = waistcoat();
  damage(record);
  return writeRecord(record);
};

const loosely = (value: unknown) => value as never;

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  mkdirSync(join(cwd, 'folder'));
  writeFileSync(join(cwd, 'good.json'), writeRecord(waistcoat()));
});
afterAll(() => rmSync(cwd, { recursive: true }));

type Case = readonly [what: string, line: readonly string[], input: string, err: string];

const CASES: readonly Case[] = [
  [
    'a file that is not there',
    ['forecast', 'gone.json'],
    '',
    'gone.json: file: there is no such file. Check the name, or make one: dryflat example waistcoat -o FILE.\n',
  ],
  ['a folder', ['check', 'folder'], '', 'folder: file: this is a folder. Name a file in it.\n'],
  [
    'an option that does not exist',
    ['forecast', 'good.json', '--colour'],
    '',
    "dryflat: unknown option '--colour'. See: dryflat --help\n",
  ],
  [
    'a command that does not exist',
    ['forecasts'],
    '',
    "dryflat: unknown command 'forecasts'. Did you mean forecast? See: dryflat --help\n",
  ],
  ['no file', ['forecast'], '', "dryflat: missing required argument 'FILE'. See: dryflat --help\n"],
  [
    'too many files',
    ['forecast', 'good.json', 'good.json'],
    '',
    "dryflat: too many arguments for 'forecast'. Expected 1 argument but got 2. See: dryflat --help\n",
  ],
  [
    'an option without its value',
    ['forecast', 'good.json', '--seed'],
    '',
    "dryflat: option '--seed <N>' argument missing. See: dryflat --help\n",
  ],
  [
    'several wrong options, all at once',
    ['forecast', 'good.json', '--units', 'ell', '--words', 'fr', '--seed', '-1', '--draws', '12.5'],
    '',
    'dryflat forecast: --units: this is not one of its choices (given: ell). Choose from: cm, in.\n' +
      'dryflat forecast: --words: this is not one of its choices (given: fr). Choose from: us, uk.\n' +
      'dryflat forecast: --seed: this is not a whole number in its range (given: -1). Give a whole number from 0 to 4294967295.\n' +
      'dryflat forecast: --draws: this is not a whole number in its range (given: 12.5). Give a whole number from 1000 to 1000000.\n',
  ],
  [
    'a size that the pattern does not have',
    ['forecast', 'good.json', '--size', 'XXL'],
    '',
    'good.json: --size: the pattern has no size of this name (given: XXL). Choose one of "1", "2", "3", "4", "5", "6", "7", "8".\n',
  ],
  [
    'nothing at all',
    ['forecast', '-'],
    '',
    'standard input: file: this is not JSON: it is empty. Mend the text there, or export the record again.\n',
  ],
  [
    'no JSON',
    ['check', '-'],
    'knit 2, purl 2',
    'standard input: file: this is not JSON: it breaks at line 1, column 1 (given: knit 2, purl 2). Mend the text there, or export the record again.\n',
  ],
  [
    'a list',
    ['check', '-'],
    '[]',
    'standard input: file: a garment record is a group of fields in { } (given: []). Choose a file that was exported as a garment record.\n',
  ],
  [
    'another format',
    ['check', '-'],
    '{"format":"scarf"}',
    'standard input: format: a garment record says "format": "dryflat-garment" (given: "scarf"). Choose a file that was exported as a garment record.\n',
  ],
  [
    'no version',
    ['check', '-'],
    '{"format":"dryflat-garment"}',
    'standard input: version: the version is a whole number from 1. Write the version that the file was saved in; the current one is 4.\n',
  ],
  [
    'a newer version that makes no sense',
    ['forecast', '-'],
    '{"format":"dryflat-garment","version":99}',
    'standard input: version: this program understands versions 1 to 4, and what it knows of the file does not hold together (given: 99). Open it with a newer program; the file is left as it is.\n' +
      'standard input: id: it is missing. Add it: a short id.\n' +
      'standard input: name: it is missing. Add it: a text.\n' +
      'standard input: kind: it is missing. Add it: one of "pullover-drop-shoulder", "pullover-set-in", "pullover-raglan", "pullover-yoke", "cardigan-drop-shoulder", "cardigan-set-in", "cardigan-raglan", "cardigan-yoke", "vest", "top", "hat", "sock", "mitten", "shawl-triangle", "shawl-rectangle", "shawl-half-round", "blanket", "other".\n' +
      'standard input: stitch: it is missing. Add it: one of "stockinette", "garter", "rib-1x1", "seed", "lace", "cables", "colourwork", "other".\n' +
      'standard input: wearer: it is missing. Add it: a group of fields in { }.\n' +
      'standard input: pattern: it is missing. Add it: a group of fields in { }.\n' +
      'standard input: yarns: it is missing. Add it: a list in [ ].\n' +
      'standard input: evidence: it is missing. Add it: a list in [ ].\n' +
      'standard input: pieces: it is missing. Add it: a list in [ ].\n' +
      'standard input: plan: it is missing. Add it: a group of fields in { }.\n' +
      'standard input: forecasts: it is missing. Add it: a list in [ ].\n' +
      'standard input: outcomes: it is missing. Add it: a list in [ ].\n' +
      'standard input: notes: it is missing. Add it: a list in [ ].\n',
  ],
  [
    'a length in quotes',
    ['forecast', '-'],
    damaged((record) => {
      record.needleMm = loosely('4 mm');
    }),
    'standard input: needleMm: it is a text, but a length in millimetres belongs here (given: "4 mm"). Write a length in millimetres.\n',
  ],
  [
    'a kind of garment that is not known',
    ['check', '-'],
    damaged((record) => {
      record.kind = loosely('poncho');
    }),
    'standard input: kind: it is none of the choices here (given: "poncho"). Write one of "pullover-drop-shoulder", "pullover-set-in", "pullover-raglan", "pullover-yoke", "cardigan-drop-shoulder", "cardigan-set-in", "cardigan-raglan", "cardigan-yoke", "vest", "top", "hat", "sock", "mitten", "shawl-triangle", "shawl-rectangle", "shawl-half-round", "blanket", "other".\n',
  ],
  [
    'nothing but a chest that may be flat or around',
    ['forecast', '-'],
    damaged((record) => {
      const [chest] = record.pattern.measurements.splice(0);
      if (chest) record.pattern.measurements = [{ ...chest, span: loosely(undefined) }];
      Object.assign(record, { pieces: [], outcomes: [], forecasts: [] });
      record.plan.pinTo = [];
    }),
    'standard input: pattern.measurements[0].span: "Chest, buttoned" is left out until you say whether 1040 mm (40.9 in) is flat or around. Write "flat" or "around"; it reads like around.\n',
  ],
  [
    'a row with too few values, and a chosen size that is not there',
    ['check', '-'],
    damaged((record) => {
      record.pattern.chosen = 'M';
      record.pattern.measurements[0]?.values.pop();
    }),
    'standard input: pattern.chosen: the pattern has no size of this name (given: "M"). Choose one of "1", "2", "3", "4", "5", "6", "7", "8".\n' +
      'standard input: pattern.measurements[0].values: it has 7 values for 8 sizes (given: "7 values"). Give 8 values, with null where the pattern gives none.\n',
  ],
  [
    'a negative length',
    ['check', '-'],
    damaged((record) => {
      record.massG = -390;
    }),
    'standard input: massG: a mass in grams must be more than 0 (given: -390). Give a mass in grams of more than 0.\n',
  ],
  [
    'a good file beside one that is not there',
    ['check', 'good.json', 'gone.json'],
    '',
    'gone.json: file: there is no such file. Check the name, or make one: dryflat example waistcoat -o FILE.\n',
  ],
  [
    'a kind that is not known, for a new record',
    ['new', '--kind', 'poncho', '-o', 'poncho.json'],
    '',
    'dryflat new: --kind: this is not one of its choices (given: poncho). Choose from: pullover-drop-shoulder, pullover-set-in, pullover-raglan, pullover-yoke, cardigan-drop-shoulder, cardigan-set-in, cardigan-raglan, cardigan-yoke, vest, top, hat, sock, mitten, shawl-triangle, shawl-rectangle, shawl-half-round, blanket, other.\n',
  ],
  [
    'a name that is too long',
    ['new', '--name', 'a'.repeat(201), '-o', 'long.json'],
    '',
    `dryflat new: name: it is longer than 200 letters (given: "${'a'.repeat(58)}…). Shorten it to 200 letters.\n`,
  ],
  [
    'a path through a file',
    ['forecast', 'good.json/one.json'],
    '',
    'good.json/one.json: file: a part of the path is not a folder. Check the name.\n',
  ],
  [
    'an example that does not exist',
    ['example', 'toga', '-o', 'toga.json'],
    '',
    'dryflat example: NAME: there is no example of this name (given: toga). Choose from: waistcoat, yoke-pullover, child-cardigan, lace-shawl, linen-top, hayloft-pullover, ferry-socks.\n',
  ],
  [
    'a file that is there already',
    ['new', '-o', 'good.json'],
    '',
    'good.json: file: there is a file of that name. Choose another name, or add --force to replace it.\n',
  ],
  [
    'a folder that is not there',
    ['example', 'waistcoat', '-o', 'no/such/one.json'],
    '',
    'no/such/one.json: file: there is no such folder. Make the folder first, or choose another.\n',
  ],
];

it.each(CASES)('C1: %s', (_, line, input, err) => {
  const before = readdirSync(cwd);
  expect(dryflat(line, { cwd, input })).toEqual({ code: 2, out: '', err });
  expect(readdirSync(cwd)).toEqual(before);
});

it('C6: a file is replaced only when told to', () => {
  const file = join(cwd, 'mine.json');
  writeFileSync(file, 'mine');
  expect(dryflat(['new', '-o', 'mine.json'], { cwd }).code).toBe(2);
  expect(readFileSync(file, 'utf8')).toBe('mine');
  expect(dryflat(['new', '-o', 'mine.json', '--force'], { cwd }).code).toBe(0);
  expect(readFileSync(file, 'utf8')).toContain('"format": "dryflat-garment"');
});

it('C1: without a command, the help is on standard error and nothing is done', () => {
  const { code, out, err } = dryflat([], { cwd });
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('Usage: dryflat COMMAND');
});

it('a file of a newer version that still makes sense is forecast, and said to be newer', () => {
  const newer = JSON.stringify({ ...waistcoat(), version: 99, moonPhase: 'full' });
  const { code, out, err } = dryflat(['forecast', '-'], { cwd, input: newer });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out.replace(/\s+/g, ' ')).toContain('This file is in version 99');
  expect(existsSync(join(cwd, 'good.json'))).toBe(true);
});
