import { explain } from '@dryflat/engine/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRecord } from '../arbitrary/index.ts';
import { sample } from '../malformed/sample.ts';
import { setAt } from '../malformed/set-at.ts';
import { writeRecord } from '../write/write-record.ts';
import { readRecord } from './read-record.ts';

const says = (text: string): string[] => {
  const read = readRecord(text);
  return read.ok ? [] : read.faults.map(explain);
};
const with_ = (path: string, value: unknown): string =>
  JSON.stringify(setAt(sample(), path, value));
const header = 'Choose a file that was exported as a garment record.' as const;

describe('texts that are nested too deeply', () => {
  const nested = (levels: number) => '['.repeat(levels) + ']'.repeat(levels);
  const within = (field: string, text: string, version = 4) =>
    `{"format":"dryflat-garment","version":${version},${field}:${text}}`;
  const refused = (column: number) => [
    `file: at line 1, column ${column} brackets are nested more than 40 deep, which no garment record is. Choose a file that was exported as a garment record.`,
  ];

  it.each([
    ['as a whole', nested(10_000), 0],
    ['not even closed', '['.repeat(100_000), 0],
    ['in a known field', within('"notes"', nested(10_000)), 1],
    ['in a field that nobody knows', within('"moons"', nested(10_000)), 1],
    ['in a field of a newer version', within('"moons"', nested(10_000), 99), 1],
    ['behind quotes and brackets in a text', within('"a[\\"{[": "]", "b"', nested(10_000)), 1],
  ])('R48: %s', (_, text, outer) => {
    // The bracket that goes too far is the forty-first from the outside.
    expect(says(text)).toEqual(refused(text.indexOf('[[[[') + 41 - outer));
  });

  it('R48: brackets in a text are letters like any other', () => {
    const read = readRecord(with_('name', '[{'.repeat(99)));
    expect(read.ok && read.value.record.name).toBe('[{'.repeat(99));
  });
});

describe('texts that are no record', () => {
  it.each([
    ['', 'file: this is not JSON: it is empty. Mend the text there, or export the record again.'],
    [
      ' \n ',
      'file: this is not JSON: it is empty. Mend the text there, or export the record again.',
    ],
    [
      '{"format": "dryflat-garment",}',
      'file: this is not JSON: it breaks at line 1, column 30 (given: {"format": "dryflat-garment",}). Mend the text there, or export the record again.',
    ],
    [
      '{\n  "format": "dryflat-garment"\n  "version": 2\n}',
      'file: this is not JSON: it breaks at line 3, column 3 (given: {). Mend the text there, or export the record again.',
    ],
    [
      '{"needleMm": 4,5}',
      'file: this is not JSON: it breaks at line 1, column 16 (given: {"needleMm": 4,5}). Mend the text there, or export the record again.',
    ],
    [
      '{"name": "half a fi',
      'file: this is not JSON: it breaks at line 1, column 20 (given: {"name": "half a fi). Mend the text there, or export the record again.',
    ],
    [
      'chest: 40 in',
      'file: this is not JSON: it breaks at line 1, column 1 (given: chest: 40 in). Mend the text there, or export the record again.',
    ],
    ['[]', `file: a garment record is a group of fields in { } (given: []). ${header}`],
    ['null', `file: a garment record is a group of fields in { } (given: null). ${header}`],
    ['"text"', `file: a garment record is a group of fields in { } (given: "text"). ${header}`],
    ['40', `file: a garment record is a group of fields in { } (given: 40). ${header}`],
    ['{}', `format: a garment record says "format": "dryflat-garment". ${header}`],
  ])('R41: %j', (text, message) => {
    expect(says(text)).toEqual([message]);
  });

  it('R41: a format of another name', () => {
    expect(says(with_('format', 'dryflat-garden'))).toEqual([
      `format: a garment record says "format": "dryflat-garment" (given: "dryflat-garden"). ${header}`,
    ]);
  });

  it.each([
    [undefined, ''],
    [0, ' (given: 0)'],
    [1.5, ' (given: 1.5)'],
    ['2', ' (given: "2")'],
    [null, ' (given: null)'],
  ])('R41: version %j', (version, given) => {
    expect(says(with_('version', version))).toEqual([
      `version: the version is a whole number from 1${given}. Write the version that the file was saved in; the current one is 4.`,
    ]);
  });

  it('R41: whatever the text, reading answers with a record or with faults that say something', () => {
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      fc
        .jsonValue()
        .map((value) => JSON.stringify({ format: 'dryflat-garment', version: 2, pattern: value })),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const read = readRecord(text);
        if (read.ok) return;
        expect(read.faults.length).toBeGreaterThan(0);
        for (const fault of read.faults) {
          expect(fault.field).not.toBe('');
          expect(fault.problem).not.toBe('');
          expect(fault.mend).toMatch(/\.$/);
        }
      }),
    );
  });

  it('R45: a byte-order mark in front is no fault, and stays in the original', () => {
    const text = `\uFEFF${writeRecord(sample())}`;
    const read = readRecord(text);
    expect(read.ok && read.value.original).toBe(text);
  });
});

describe('files of a newer version', () => {
  it('R26: what is not known is left out, the rest is shown read-only, the original is kept', () => {
    const text = JSON.stringify({
      ...sample(),
      version: 7,
      moonPhase: 'full',
      plan: { ...sample().plan, steam: { seconds: 4 } },
    });
    const read = readRecord(text);
    expect(read.ok && read.value).toEqual({
      record: sample(),
      readOnly: true,
      migratedFrom: null,
      notices: [
        'This file is in version 7, newer than this program (4): it can be looked at, not changed. Not shown: plan.steam, moonPhase.',
      ],
      original: text,
    });
  });

  it('R26: any record under a newer number opens read-only', () => {
    fc.assert(
      fc.property(anyRecord, fc.integer({ min: 5, max: 99 }), (record, version) => {
        const read = readRecord(JSON.stringify({ ...record, version }));
        expect(read.ok && [read.value.readOnly, read.value.record]).toEqual([true, record]);
      }),
    );
  });

  it('R27: a newer file whose rest is not understood is a fault that says both', () => {
    const text = JSON.stringify({ ...sample(), version: 5, kind: 'robe', extra: 1 });
    const read = readRecord(text);
    expect(read.ok ? [] : read.faults.map(({ code, field }) => [code, field])).toEqual([
      ['too-new', 'version'],
      ['not-among', 'kind'],
    ]);
    expect(says(text)[0]).toBe(
      'version: this program understands versions 1 to 4, and what it knows of the file does not hold together (given: 5). Open it with a newer program; the file is left as it is.',
    );
  });
});

describe('files of an older version', () => {
  it('R28: a fault in an old file is named where it stands in that file', () => {
    const { washing: _, ...plan } = sample().plan;
    const old = { ...sample(), version: 1, plan, massG: 'heavy' };
    expect(says(JSON.stringify(old))).toEqual([
      'massG: it is a text, but a mass in grams belongs here (given: "heavy"). Write a mass in grams.',
    ]);
  });
});
