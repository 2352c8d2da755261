import type { Mark, PictureMark, Sheet, Stroke, TextMark } from './sheet.ts';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
const escaped = (text: string): string => text.replace(/[&<>"]/g, (each) => ESCAPES[each]!);

/** Thousandths of a millimetre: finer than any printer. */
const at = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

const lineOf = (stroke: Stroke | undefined): string => {
  if (stroke === undefined) return '';
  const dash =
    stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.map(at).join(' ')}"`;
  return ` stroke="${stroke.colour}" stroke-width="${at(stroke.widthMm)}"${dash}`;
};

const look = (mark: { readonly stroke?: Stroke; readonly fill?: string }): string =>
  ` fill="${mark.fill ?? 'none'}"${lineOf(mark.stroke)}`;

const textOf = ({ x, y, text, sizeMm, weight, align, colour }: TextMark): string => {
  const strong = weight === 'strong' ? ' font-weight="700"' : '';
  return `<text x="${at(x)}" y="${at(y)}" font-size="${at(sizeMm)}" text-anchor="${align}" fill="${colour}"${strong}>${escaped(text)}</text>`;
};

const pictureOf = ({ x, y, width, height, type, base64, alt }: PictureMark): string =>
  `<image x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" preserveAspectRatio="none" href="data:${type};base64,${base64}"><title>${escaped(alt)}</title></image>`;

const markOf = (mark: Mark): string => {
  switch (mark.kind) {
    case 'path':
      return `<path d="${mark.d}"${look(mark)}${mark.evenOdd ? ' fill-rule="evenodd"' : ''}/>`;
    case 'line':
      return `<line x1="${at(mark.from.x)}" y1="${at(mark.from.y)}" x2="${at(mark.to.x)}" y2="${at(mark.to.y)}"${lineOf(mark.stroke)}/>`;
    case 'box':
      return `<rect x="${at(mark.x)}" y="${at(mark.y)}" width="${at(mark.width)}" height="${at(mark.height)}"${look(mark)}/>`;
    case 'dot':
      return `<circle cx="${at(mark.x)}" cy="${at(mark.y)}" r="${at(mark.radius)}"${look(mark)}/>`;
    case 'text':
      return textOf(mark);
    case 'picture':
      return pictureOf(mark);
  }
};

/** Letters that carry their own fractions; a reader's machine may have other faces than ours. */
const FAMILIES = "'Atkinson Hyperlegible Next', 'Open Sans', 'DejaVu Sans', sans-serif";

/**
 * A sheet as an SVG of its own, to scale: width and height in mm, a unit of its view box is a
 * millimetre. The same sheet gives the same text.
 */
export const toSvg = (sheet: Sheet): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${at(sheet.widthMm)}mm" height="${at(sheet.heightMm)}mm" viewBox="0 0 ${at(sheet.widthMm)} ${at(sheet.heightMm)}" font-family="${FAMILIES}" stroke-linejoin="round">`,
    `<title>${escaped(sheet.title)}</title>`,
    `<rect width="${at(sheet.widthMm)}" height="${at(sheet.heightMm)}" fill="#ffffff"/>`,
    ...sheet.marks.map(markOf),
    '</svg>',
    '',
  ].join('\n');
