import PDFDocument from 'pdfkit';
import { FACE_FILES, type FaceName } from '../type/face-files.ts';
import type { Faces } from '../type/faces.ts';
import type { Mark, PictureMark, Sheet, Stroke, TextMark } from './sheet.ts';

export interface PdfAbout {
  readonly title: string;
  /** Written into the file as the moment it was made; nothing else in it depends on a clock. */
  readonly made: Date;
  readonly faces: Faces;
}

type Doc = PDFKit.PDFDocument;

/** Points of a PDF in a millimetre: 72 to the inch. */
const POINTS = 72 / 25.4;

const pen = (doc: Doc, { colour, widthMm, dash }: Stroke): void => {
  doc.lineWidth(widthMm).strokeColor(colour);
  if (dash === undefined) doc.undash();
  else doc.dash(dash[0]!, { space: dash[1] ?? dash[0]! });
};

/** Fills and strokes the path that was just described. */
const paint = (
  doc: Doc,
  { stroke, fill, evenOdd = false }: { stroke?: Stroke; fill?: string; evenOdd?: boolean },
): void => {
  if (stroke !== undefined) pen(doc, stroke);
  const rule = evenOdd ? 'even-odd' : 'non-zero';
  if (fill !== undefined && stroke !== undefined)
    doc.fillColor(fill).fillAndStroke(fill, stroke.colour, rule);
  else if (fill !== undefined) doc.fillColor(fill).fill(fill, rule);
  else if (stroke !== undefined) doc.stroke();
};

const write = (doc: Doc, mark: TextMark, faces: Faces): void => {
  const { text, sizeMm, weight, align, colour, y } = mark;
  const runs = faces.runs(text, sizeMm, weight);
  const width = runs.reduce((sum, { widthMm }) => sum + widthMm, 0);
  let x = mark.x - { start: 0, middle: width / 2, end: width }[align];
  doc.fillColor(colour).fontSize(sizeMm);
  for (const run of runs) {
    doc.font(run.face).text(run.text, x, y, { lineBreak: false, baseline: 'alphabetic' });
    x += run.widthMm;
  }
};

const bytesOf = (base64: string): ArrayBuffer =>
  Uint8Array.from(atob(base64), (char) => char.charCodeAt(0)).buffer;

const place = (doc: Doc, { x, y, width, height, base64 }: PictureMark): void => {
  doc.image(bytesOf(base64), x, y, { width, height });
};

const trace = (doc: Doc, mark: Exclude<Mark, TextMark | PictureMark>): void => {
  if (mark.kind === 'path') doc.path(mark.d);
  else if (mark.kind === 'line') doc.moveTo(mark.from.x, mark.from.y).lineTo(mark.to.x, mark.to.y);
  else if (mark.kind === 'box') doc.rect(mark.x, mark.y, mark.width, mark.height);
  else doc.circle(mark.x, mark.y, mark.radius);
};

const draw = (doc: Doc, mark: Mark, faces: Faces): void => {
  if (mark.kind === 'text') write(doc, mark, faces);
  else if (mark.kind === 'picture') place(doc, mark);
  else {
    trace(doc, mark);
    paint(doc, mark);
  }
};

const bytesWritten = (doc: Doc): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, { byteLength }) => sum + byteLength, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.byteLength;
      }
      resolve(bytes);
    });
    doc.end();
  });

/**
 * Sheets as one PDF, a page each, of exactly their size. The same sheets, title and day give the
 * same bytes. Runs in Node and in a browser's worker.
 */
export const toPdf = (
  sheets: readonly Sheet[],
  { title, made, faces }: PdfAbout,
): Promise<Uint8Array> => {
  const doc = new PDFDocument({
    autoFirstPage: false,
    compress: true,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    info: { Title: title, Creator: 'Dryflat', Producer: 'Dryflat', CreationDate: made },
    // No default face: the standard ones would need files of their own.
    font: null as never,
  });
  for (const { name } of FACE_FILES)
    doc.registerFont(name, faces.bytes.get(name as FaceName) as never);
  for (const sheet of sheets) {
    doc.addPage({ size: [sheet.widthMm * POINTS, sheet.heightMm * POINTS], margin: 0 });
    doc.scale(POINTS).lineJoin('round');
    for (const mark of sheet.marks) draw(doc, mark, faces);
  }
  return bytesWritten(doc);
};
