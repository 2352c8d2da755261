import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF read back by another program than wrote it; millimetres from the top left of a page. */
export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly text: string;
  readonly words: readonly {
    text: string;
    x: number;
    y: number;
    widthMm: number;
    heightMm: number;
  }[];
  readonly paths: readonly ReadPath[];
  readonly pictures: readonly { x: number; y: number; widthMm: number; heightMm: number }[];
}

export interface ReadPath {
  readonly stroked: boolean;
  readonly lineMm: number;
  /** Chains of points; curves by their ends. */
  readonly chains: readonly (readonly { x: number; y: number }[])[];
}

type Matrix = readonly [number, number, number, number, number, number];

const MM = 25.4 / 72;
const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];
const apply = (m: Matrix, x: number, y: number) => ({
  x: m[0] * x + m[2] * y + m[4],
  y: m[1] * x + m[3] * y + m[5],
});

/** Numbers that follow each drawing operation: move, line, curve, quadratic, close. */
const LENGTHS = [2, 2, 6, 4, 0];

const chainsIn = (
  data: ArrayLike<number>,
  place: (x: number, y: number) => { x: number; y: number },
) => {
  const chains: { x: number; y: number }[][] = [];
  for (let i = 0; i < data.length; ) {
    const op = data[i]!;
    const length = LENGTHS[op]!;
    if (op === 4) chains.at(-1)!.push(chains.at(-1)![0]!);
    else {
      const end = place(data[i + length - 1]!, data[i + length]!);
      if (op === 0) chains.push([end]);
      else chains.at(-1)!.push(end);
    }
    i += 1 + length;
  }
  return chains;
};

interface State {
  readonly matrix: Matrix;
  readonly line: number;
}

const STROKES: ReadonlySet<number> = new Set([
  OPS.stroke,
  OPS.closeStroke,
  OPS.fillStroke,
  OPS.eoFillStroke,
  OPS.closeFillStroke,
]);

const drawnOn = async (page: PDFPageProxy, flip: Matrix) => {
  const { fnArray, argsArray } = await page.getOperatorList();
  const paths: ReadPath[] = [];
  const pictures: { x: number; y: number; widthMm: number; heightMm: number }[] = [];
  const kept: State[] = [];
  let state: State = { matrix: flip, line: 1 };
  fnArray.forEach((op, k) => {
    const args = argsArray[k];
    if (op === OPS.save) kept.push(state);
    else if (op === OPS.restore) state = kept.pop() ?? state;
    else if (op === OPS.transform) state = { ...state, matrix: times(state.matrix, args) };
    else if (op === OPS.setLineWidth) state = { ...state, line: args[0] };
    else if (op === OPS.constructPath) {
      const { matrix, line } = state;
      paths.push({
        stroked: STROKES.has(args[0]),
        lineMm: line * Math.abs(matrix[0]),
        chains: chainsIn(args[1][0], (x, y) => apply(matrix, x, y)),
      });
    } else if (op === OPS.paintImageXObject) {
      const [p, q] = [apply(state.matrix, 0, 0), apply(state.matrix, 1, 1)];
      pictures.push({
        x: Math.min(p.x, q.x),
        y: Math.min(p.y, q.y),
        widthMm: Math.abs(q.x - p.x),
        heightMm: Math.abs(q.y - p.y),
      });
    }
  });
  return { paths, pictures };
};

const readPage = async (page: PDFPageProxy): Promise<ReadPage> => {
  const [left, bottom, right, top] = page.view as [number, number, number, number];
  const flip: Matrix = [MM, 0, 0, -MM, -left * MM, top * MM];
  const { items } = await page.getTextContent();
  const words = items.flatMap((item) => ('str' in item ? [item] : []));
  return {
    widthMm: (right - left) * MM,
    heightMm: (top - bottom) * MM,
    text: words.map(({ str, hasEOL }) => (hasEOL ? `${str}\n` : str)).join(''),
    words: words
      .filter(({ str }) => str.trim() !== '')
      .map(({ str, transform, width, height }) => ({
        text: str,
        ...apply(flip, transform[4], transform[5]),
        widthMm: width * MM,
        heightMm: height * MM,
      })),
    ...(await drawnOn(page, flip)),
  };
};

/** Every page of a PDF. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPage[]> => {
  const { promise } = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await promise;
  const pages: ReadPage[] = [];
  for (let k = 1; k <= document.numPages; k++)
    pages.push(await readPage(await document.getPage(k)));
  return pages;
};

/** Everything that a page has, as boxes: for the law that nothing leaves its margin. */
export const extentOf = ({ words, paths, pictures }: ReadPage) => {
  const points = [
    ...paths.flatMap(({ chains }) => chains.flat()),
    ...words.flatMap(({ x, y, widthMm }) => [
      { x, y },
      { x: x + widthMm, y },
    ]),
    ...pictures.flatMap(({ x, y, widthMm, heightMm }) => [
      { x, y },
      { x: x + widthMm, y: y + heightMm },
    ]),
  ];
  return {
    left: Math.min(...points.map(({ x }) => x)),
    right: Math.max(...points.map(({ x }) => x)),
    top: Math.min(...points.map(({ y }) => y)),
    bottom: Math.max(...points.map(({ y }) => y)),
  };
};
