import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
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
import { insideOf, picturesIn } from '../../../../packages/paper/src/testing/every-file.ts';
import { peopled } from '../../../../packages/paper/src/testing/persons.ts';
import { readPdf } from '../../../../packages/paper/src/testing/read-pdf.ts';
import { runProgram } from '../program.ts';
import type { Surroundings } from '../surroundings.ts';

/** An example with persons in every text, and pictures with a place planted wherever there is room. */
export const garment = (slug: string): GarmentRecord => {
  const found = findExample(slug);
  if (!found) throw new Error(`no example ${slug}`);
  const photo = (kind: Plain): Photo => ({
    id: kind,
    when: 'dried',
    caption: '',
    type: TYPE_OF[kind],
    widthPx: 8,
    heightPx: 8,
    data: toBase64(plantedAll(kind, PLANTED)),
  });
  return peopled({ ...found.record, photos: (Object.keys(PLAIN) as Plain[]).map(photo) });
};

/** Each kind of file, and the command that writes it of the record on standard input. */
export const LINES = {
  'report.html': ['report', '-', '--html'],
  'report.pdf': ['report', '-', '--pdf'],
  'report.md': ['report', '-', '--markdown'],
  'sheet.pdf': ['print', '-', '--blank', '--pdf'],
  'sheet.svg': ['print', '-', '--blank', '--svg'],
  'mat.pdf': ['print', '-', '--pdf'],
  'mat.svg': ['block', '-', '--svg'],
  'drying.ics': ['dry', '-', '--weighings', '2', '--calendar'],
  'pace.ics': ['pace', '-', '--today', '2031-01-13', '--calendar'],
} as const;

export type FileName = keyof typeof LINES;

const installed = createRequire(import.meta.url);

/** What one command writes of a record, and nothing of the machine but its letters for pages. */
const contentOf = async (record: GarmentRecord, file: FileName): Promise<Buffer> => {
  let content: string | Uint8Array | null = null;
  const surroundings: Surroundings = {
    read: async () => writeRecord(record),
    write: async ([given]) => {
      content = given?.[1] ?? null;
      return null;
    },
    font: (name) => readFile(installed.resolve(name)),
    random: () => 0.5,
    today: () => '2031-01-13',
    colours: false,
  };
  const { err } = await runProgram([...LINES[file], file], surroundings);
  if (content === null) throw new Error(err);
  return Buffer.from(content);
};

/** Everything that the file holds, as letters: its bytes and what is packed in them, and what it reads as. */
export const written = async (record: GarmentRecord, file: FileName): Promise<string[]> => {
  const content = await contentOf(record, file);
  if (file.endsWith('.pdf')) {
    const pages = await readPdf(content);
    return [...insideOf(content).map(lettersOf), ...pages.map(({ text }) => text)];
  }
  const text = content.toString('utf8');
  // Long lines of a calendar are folded: RFC 5545, section 3.1.
  return [text.replaceAll('\r\n ', ''), ...picturesIn(text).map(lettersOf)];
};
