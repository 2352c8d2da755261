import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { findExample, type GarmentRecord, type Photo, writeRecord } from '@dryflat/record';
import { toBase64 } from '@dryflat/record/photo';
import {
  lettersOf,
  PLAIN,
  PLANTED,
  type Plain,
  plantedAll,
  TYPE_OF,
} from '@dryflat/record/photo/testing';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { insideOf, picturesIn } from '../../../packages/paper/src/testing/every-file.ts';
import { PERSONS, peopled } from '../../../packages/paper/src/testing/persons.ts';
import { readPdf } from '../../../packages/paper/src/testing/read-pdf.ts';
import { dryflat, emptyFolder } from './testing/dryflat.ts';

const KINDS = Object.keys(PLAIN) as Plain[];

/** A garment with persons in every text, and pictures with a place planted wherever there is room. */
const garment = (slug: string): GarmentRecord => {
  const found = findExample(slug)?.record ?? expect.fail('no example');
  const photo = (kind: Plain): Photo => ({
    id: kind,
    when: 'dried',
    caption: '',
    type: TYPE_OF[kind],
    widthPx: 8,
    heightPx: 8,
    data: toBase64(plantedAll(kind, PLANTED)),
  });
  return peopled({ ...found, photos: KINDS.map(photo) });
};

/** The quickest plan, and one that was weighed as it dried. */
const GARMENTS = { FILE: 'ferry-socks', DRIED: 'hayloft-pullover' };

/** Each file that a command writes, and the commands that write them. */
const LINES = {
  'report.html': ['report', 'FILE', '--html'],
  'report.pdf': ['report', 'FILE', '--pdf'],
  'report.md': ['report', 'FILE', '--markdown'],
  'sheet.pdf': ['print', 'FILE', '--blank', '--pdf'],
  'sheet.svg': ['print', 'FILE', '--blank', '--svg'],
  'mat.pdf': ['print', 'FILE', '--pdf'],
  'mat.svg': ['block', 'FILE', '--svg'],
  'drying.ics': ['dry', 'DRIED', '--weighings', '2', '--calendar'],
  'pace.ics': ['pace', 'FILE', '--today', '2031-01-13', '--calendar'],
} as const;
const FILES = Object.entries(LINES);

let cwd: string;
beforeAll(() => {
  cwd = emptyFolder();
  for (const [name, slug] of Object.entries(GARMENTS)) {
    const record = garment(slug);
    writeFileSync(join(cwd, `private-${name}.json`), writeRecord(record));
    const open = { ...record, report: { ...record.report!, body: true } };
    writeFileSync(join(cwd, `open-${name}.json`), writeRecord(open));
  }
});
afterAll(() => rmSync(cwd, { recursive: true }));

/** What the file holds that a command writes of a garment: as letters of its bytes, and as text. */
const written = async (file: string, line: readonly string[], of: string): Promise<string[]> => {
  const path = `${of}-${file}`;
  const given = line.map((each) => (each in GARMENTS ? `${of}-${each}.json` : each));
  const ran = dryflat([...given, path], { cwd });
  expect(ran).toMatchObject({ code: 0 });
  const bytes = new Uint8Array(readFileSync(join(cwd, path)));
  if (!file.endsWith('.pdf')) {
    const text = Buffer.from(bytes).toString('utf8');
    return [text.replaceAll('\r\n ', ''), ...picturesIn(text).map(lettersOf)];
  }
  const pages = await readPdf(bytes);
  return [...insideOf(bytes).map(lettersOf), ...pages.map(({ text }) => text)];
};

describe('what a command writes', () => {
  it.each(FILES)('C21: %s names nobody, and tells no place', async (file, line) => {
    const texts = await written(file, line, 'private');
    expect(texts.filter((text) => PERSONS.test(text))).toEqual([]);
    expect(texts.filter((text) => text.includes(PLANTED))).toEqual([]);
  });

  it.each(FILES)(
    'C21: %s has the garment’s own name where its report says so',
    async (file, line) => {
      const texts = await written(file, line, 'open');
      expect(texts.some((text) => text.includes('Ottilie'))).toBe(true);
      expect(texts.filter((text) => text.includes(PLANTED))).toEqual([]);
    },
  );

  it('C21: --with-body says so for once', () => {
    expect(dryflat(['report', 'private-FILE.json', '--with-body'], { cwd }).out).toContain(
      'Ottilie',
    );
    expect(dryflat(['report', 'private-FILE.json'], { cwd }).out).not.toMatch(PERSONS);
  });

  it('C21: that pictures were cleaned is told by check', () => {
    const { code, out } = dryflat(['check', 'private-FILE.json'], { cwd });
    expect(code).toBe(0);
    expect(out).toContain(
      'private-FILE.json: Taken out of 5 pictures: what a camera or a program wrote',
    );
  });
});
