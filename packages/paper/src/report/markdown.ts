import type { Telling } from '../input/telling.ts';
import { type Part, partsOf, photoWords } from './parts.ts';
import type { Report } from './report.ts';

/** Characters that mean something in Markdown, wherever they stand; CommonMark 0.31, 2.4 and GFM tables. */
const MARKS = /[\\`*_[\]<>|~#]/g;
const plain = (text: string): string =>
  text
    .replace(MARKS, '\\$&')
    .replace(/^(\s*)([-+])(?=\s)/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s)/, '$1\\$2')
    .replaceAll(/\s*\n\s*/g, ' ');

const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const tableOf = (columns: readonly string[], rows: readonly (readonly string[])[]): string =>
  [
    line(columns.map(plain)),
    line(columns.map((_, k) => (k === 0 ? '---' : '---:'))),
    ...rows.map((row) => line(row.map(plain))),
  ].join('\n');

const partOf = (part: Part): string => {
  switch (part.kind) {
    case 'heading':
      return `${'#'.repeat(part.level)} ${plain(part.text)}`;
    case 'paragraph':
      return plain(part.text);
    case 'facts':
      return part.rows.map(([what, is]) => `- ${plain(what)}: ${plain(is)}`).join('\n');
    case 'table':
      return tableOf(part.columns, part.rows);
    case 'list':
      return part.texts.map((text) => `- ${plain(text)}`).join('\n');
    case 'photo':
      // A text holds no picture; the HTML and the PDF do.
      return `- ${plain(photoWords(part.photo))}`;
  }
};

/** A report as Markdown with GFM tables; of photos it has the captions. */
export const reportMarkdown = (report: Report, telling: Telling): string =>
  `${partsOf(report, telling).map(partOf).join('\n\n')}\n`;
