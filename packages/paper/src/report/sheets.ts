import type { Block } from '../flow/block.ts';
import { picture } from '../flow/figure.ts';
import { flow } from '../flow/flow.ts';
import { table } from '../flow/table.ts';
import { heading, list, paragraph } from '../flow/text-block.ts';
import type { PageOptions } from '../input/telling.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { type Part, partsOf, photoWords } from './parts.ts';
import type { Report } from './report.ts';

/** Tallest that a photo stands on a page, mm: two to a page. */
const PHOTO = 95;

/** Type of tables, mm: a report of a usual garment stays on one page. */
const SIZE = 2.9;

const photoOf = ({ photo }: Extract<Part, { kind: 'photo' }>): Block => {
  const { picture: shown, widthPx, heightPx, caption } = photo;
  if (shown === null) return paragraph(photoWords(photo));
  const { type, data } = shown;
  if (type === 'image/webp')
    return paragraph(`${photoWords(photo)} (WebP: it is in the HTML report)`);
  return picture({ type, base64: data, widthPx, heightPx, caption }, PHOTO);
};

const blockOf = (part: Part): Block => {
  switch (part.kind) {
    case 'heading':
      return heading(part.text, part.level);
    case 'paragraph':
      return paragraph(part.text);
    case 'facts':
      return table(
        [
          { title: '', part: 1 },
          { title: '', part: 5 },
        ],
        part.rows.map(([what, is]) => [{ text: what, quiet: true }, is]),
        { sizeMm: SIZE },
      );
    case 'table':
      return table(
        part.columns.map((title, k) => ({
          title,
          part: k === 0 ? 2.2 : title.startsWith('forecast') ? 2 : 1.3,
          align: k === 0 ? 'start' : 'end',
        })),
        part.rows,
        { sizeMm: SIZE },
      );
    case 'list':
      return list(part.texts);
    case 'photo':
      return photoOf(part);
  }
};

/** A report as pages. */
export const reportSheets = (report: Report, options: PageOptions): Sheet[] =>
  flow(partsOf(report, options).map(blockOf), { ...options, title: report.title });
