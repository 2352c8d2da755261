import { inflateSync } from 'node:zlib';
import { fromBase64 } from '@dryflat/record/photo';
import { reportHtml } from '../report/html.ts';
import { reportMarkdown } from '../report/markdown.ts';
import type { Report } from '../report/report.ts';
import { reportSheets } from '../report/sheets.ts';
import { toPdf } from '../sheet/pdf.ts';
import { toSvg } from '../sheet/svg.ts';
import { A4, ABOUT } from './inputs.ts';

/** Every picture that a text carries in itself. */
export const picturesIn = (text: string): Uint8Array[] =>
  [...text.matchAll(/base64,([A-Za-z0-9+/=]+)/g)].map(([, data]) => fromBase64(data!)!);

const inflated = (stream: Buffer): Buffer[] => {
  try {
    return [inflateSync(stream)];
  } catch {
    return [];
  }
};

/** Everything that a PDF holds: itself, and each stream of it unpacked. ISO 32000-1, 7.3.8. */
export const insideOf = (pdf: Uint8Array): Uint8Array[] => {
  const letters = Buffer.from(pdf).toString('latin1');
  const streams = [...letters.matchAll(/stream\r?\n([\s\S]*?)\r?\nendstream/g)];
  return [pdf, ...streams.flatMap(([, stream]) => inflated(Buffer.from(stream!, 'latin1')))];
};

export interface EveryFile {
  readonly html: string;
  /** What each file holds, with what is packed in it taken out, by kind of file. */
  readonly bytes: readonly (readonly [how: string, bytes: Uint8Array])[];
}

/** A report in every file that it is given out as. */
export const everyFile = async (report: Report): Promise<EveryFile> => {
  const html = reportHtml(report, A4);
  const sheets = reportSheets(report, A4);
  const pdf = await toPdf(sheets, { ...ABOUT, title: report.title });
  const texts = [
    ['HTML', html],
    ['Markdown', reportMarkdown(report, A4)],
    ...sheets.map((sheet) => ['SVG', toSvg(sheet)] as const),
  ] as const;
  return {
    html,
    bytes: [
      ...texts.flatMap(([how, text]) =>
        [new TextEncoder().encode(text), ...picturesIn(text)].map((bytes) => [how, bytes] as const),
      ),
      ...insideOf(pdf).map((bytes) => ['PDF', bytes] as const),
    ],
  };
};
