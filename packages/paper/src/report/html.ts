import type { Telling } from '../input/telling.ts';
import { type Part, partsOf, photoWords } from './parts.ts';
import type { Report } from './report.ts';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
const escaped = (text: string): string => text.replace(/[&<>"]/g, (each) => ESCAPES[each]!);

/** One page by itself: it asks for nothing from anywhere, and prints as it stands. */
const STYLE = `
:root { color-scheme: light dark; }
body { font: 1rem/1.5 'Atkinson Hyperlegible Next', system-ui, sans-serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
h1 { line-height: 1.2; } h2 { margin: 2rem 0 0.5rem; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { text-align: end; padding: 0.3rem 0.5rem; border-bottom: 1px solid #8886; vertical-align: top; }
th:first-child, td:first-child { text-align: start; padding-inline-start: 0; font-weight: normal; }
td { white-space: nowrap; }
thead th { font-weight: normal; opacity: 0.8; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0.25rem 1.25rem; }
dt { opacity: 0.8; } dd { margin: 0; }
figure { margin: 1rem 0; break-inside: avoid; } img { max-width: 100%; height: auto; }
@media print { body { margin: 0; max-width: none; } h2 { break-after: avoid; } }
`;

const cells = (row: readonly string[]): string =>
  row
    .map((cell, k) =>
      k === 0 ? `<th scope="row">${escaped(cell)}</th>` : `<td>${escaped(cell)}</td>`,
    )
    .join('');

const tableOf = ({ columns, rows }: Extract<Part, { kind: 'table' }>): string =>
  [
    '<div class="wide" tabindex="0"><table>',
    `<thead><tr>${columns.map((each) => `<th scope="col">${escaped(each)}</th>`).join('')}</tr></thead>`,
    '<tbody>',
    ...rows.map((row) => `<tr>${cells(row)}</tr>`),
    '</tbody></table></div>',
  ].join('\n');

const photoOf = ({ photo }: Extract<Part, { kind: 'photo' }>): string => {
  const { picture, widthPx, heightPx } = photo;
  if (picture === null) return `<p>${escaped(photoWords(photo))}</p>`;
  const caption = escaped(photo.caption);
  return `<figure><img src="data:${picture.type};base64,${picture.data}" width="${widthPx}" height="${heightPx}" alt="${caption}">${caption === '' ? '' : `<figcaption>${caption}</figcaption>`}</figure>`;
};

const partOf = (part: Part): string => {
  switch (part.kind) {
    case 'heading':
      return `<h${part.level}>${escaped(part.text)}</h${part.level}>`;
    case 'paragraph':
      return `<p>${escaped(part.text)}</p>`;
    case 'facts':
      return `<dl>\n${part.rows.map(([what, is]) => `<dt>${escaped(what)}</dt><dd>${escaped(is)}</dd>`).join('\n')}\n</dl>`;
    case 'table':
      return tableOf(part);
    case 'list':
      return `<ul>\n${part.texts.map((text) => `<li>${escaped(text)}</li>`).join('\n')}\n</ul>`;
    case 'photo':
      return photoOf(part);
  }
};

/** A report as one HTML file that needs no other, its photos in it. */
export const reportHtml = (report: Report, telling: Telling): string =>
  [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(report.title)}</title>`,
    `<style>${STYLE}</style>`,
    '</head>',
    '<body>',
    '<main>',
    ...partsOf(report, telling).map(partOf),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
