import { flattenPath, type Point } from '@dryflat/engine/garment';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PaperInput } from '../input/paper-input.ts';
import type { PageOptions } from '../input/telling.ts';
import { PAPERS, PRINTER_MARGIN } from '../sheet/paper-size.ts';
import { toPdf } from '../sheet/pdf.ts';
import { toSvg } from '../sheet/svg.ts';
import { A4, ABOUT, LETTER, plannedExample, unplanned } from '../testing/inputs.ts';
import { extentOf, type ReadPage, type ReadPath, readPdf } from '../testing/read-pdf.ts';
import { fullSize } from './full-size.ts';
import { fullSizePieces } from './pieces.ts';
import { OVERLAP } from './tiles.ts';

/** What a print at 100 % is to be true to, mm. */
const TRUE_TO = 0.5;
/** Widths of lines tell them apart in a file: the wanted edge, and the rings of the alignment marks. */
const WANTED = 0.45;

const sheetsOf = (input: PaperInput, options: PageOptions, piece?: string) => {
  const made = fullSize(input, piece === undefined ? options : { ...options, piece });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};

interface TilePage {
  readonly label: string;
  readonly row: number;
  readonly column: number;
  readonly page: ReadPage;
}

/** Pages of tiles by their label, which stands alone and large; the key before them has none. */
const tilesIn = (pages: readonly ReadPage[]): TilePage[] =>
  pages.flatMap((page) => {
    const label = page.words.find(({ text, heightMm }) => heightMm > 6 && /^[A-Z]\d+$/.test(text));
    if (label === undefined) return [];
    const [row, column] = [label.text.charCodeAt(0) - 65, Number(label.text.slice(1)) - 1];
    return [{ label: label.text, row, column, page }];
  });

const near = (a: number, b: number, by: number) => Math.abs(a - b) < by;

const chainsOf = ({ paths }: ReadPage, lineMm: number): ReadPath['chains'][number][] =>
  paths
    .filter((path) => path.stroked && near(path.lineMm, lineMm, 0.01))
    .flatMap(({ chains }) => chains);

/** Middles of the alignment marks: where an upright and a level line of 6 mm cross. */
const marksOf = ({ paths }: ReadPage): Point[] => {
  const lines = paths.flatMap(({ chains }) =>
    chains.filter(
      (c) => c.length === 2 && near(Math.hypot(c[1]!.x - c[0]!.x, c[1]!.y - c[0]!.y), 6, 0.01),
    ),
  );
  const middles = lines.map(([a, b]) => ({ x: (a!.x + b!.x) / 2, y: (a!.y + b!.y) / 2 }));
  return middles.filter(
    (p, k) => middles.findIndex((q) => near(p.x, q.x, 0.01) && near(p.y, q.y, 0.01)) === k,
  );
};

/** How far the next sheet lies from this one when crosses are laid on crosses. */
const stepOf = (page: ReadPage): Point => {
  const marks = marksOf(page);
  const [xs, ys] = [marks.map(({ x }) => x), marks.map(({ y }) => y)];
  return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
};

/** All of the wanted edge, its sheets laid together by their crosses as a knitter lays them. */
const laidTogether = (tiles: readonly TilePage[]): Point[][] =>
  tiles.flatMap(({ page, row, column }) => {
    const step = stepOf(page);
    return chainsOf(page, WANTED).map((chain) =>
      chain.map(({ x, y }) => ({ x: x + column * step.x, y: y + row * step.y })),
    );
  });

const fromSegment = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

const fromChains = (p: Point, chains: readonly (readonly Point[])[]): number =>
  Math.min(
    ...chains.flatMap((chain) => chain.slice(1).map((b, k) => fromSegment(p, chain[k]!, b))),
  );

const everyMillimetre = (chain: readonly Point[]): Point[] =>
  chain.slice(1).flatMap((b, k) => {
    const a = chain[k]!;
    const steps = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y));
    return Array.from({ length: steps }, (_, i) => ({
      x: a.x + ((b.x - a.x) * i) / steps,
      y: a.y + ((b.y - a.y) * i) / steps,
    }));
  });

const cornerOf = (points: readonly Point[]): Point => ({
  x: Math.min(...points.map(({ x }) => x)),
  y: Math.min(...points.map(({ y }) => y)),
});

const movedTo = (points: readonly Point[], from: Point, to: Point): Point[] =>
  points.map(({ x, y }) => ({ x: x - from.x + to.x, y: y - from.y + to.y }));

const closed = (points: readonly Point[]) => [...points, points[0]!];

describe.each([
  ['a4', A4],
  ['letter', LETTER],
] as const)('on %s', (paper, options) => {
  let input: PaperInput;
  let pages: ReadPage[];
  let tiles: TilePage[];
  beforeAll(async () => {
    input = unplanned('waistcoat');
    pages = await readPdf(await toPdf(sheetsOf(input, options, 'front'), ABOUT));
    tiles = tilesIn(pages);
  });

  test('PA21: both check lines stand on the key and on every tile, true to what they say', () => {
    expect(tiles.length).toBeGreaterThan(3);
    expect(pages).toHaveLength(tiles.length + 1);
    for (const page of pages) {
      const lengths = page.paths.flatMap(({ chains }) =>
        chains.flatMap((c) =>
          c.length === 2 ? [Math.hypot(c[1]!.x - c[0]!.x, c[1]!.y - c[0]!.y)] : [],
        ),
      );
      // Asked for is half a millimetre; a file is true to its last digit.
      expect(
        lengths.filter((each) => near(each, 100, 0.01)),
        'of 100 mm',
      ).toHaveLength(1);
      expect(
        lengths.filter((each) => near(each, 101.6, 0.01)),
        'of 4 in',
      ).toHaveLength(1);
      expect(page.text).toContain('100 mm');
      expect(page.text).toContain('4 in');
      expect(page.text).toMatch(/at 100 %, no fitting to page/);
    }
  });

  test('PA22: sheets laid together by their crosses give the whole outline', () => {
    const front = input.asPinned.find(({ name }) => name === 'front')!;
    const outline = flattenPath(front.path, 0.02);
    const union = laidTogether(tiles);
    const corner = cornerOf(outline);
    const moved = movedTo(outline, corner, cornerOf(union.flat()));
    for (const p of moved) expect(fromChains(p, union)).toBeLessThan(TRUE_TO);
    for (const p of union.flat()) expect(fromChains(p, [closed(moved)])).toBeLessThan(TRUE_TO);
  });

  test('PA23: what two sheets share is on both', () => {
    let shared = 0;
    for (const here of tiles) {
      const there = tiles.find(({ row, column }) => row === here.row && column === here.column + 1);
      if (there === undefined) continue;
      const step = stepOf(here.page);
      const right = PAPERS[paper].widthMm - PRINTER_MARGIN;
      const inside = chainsOf(here.page, WANTED)
        .flatMap(everyMillimetre)
        .filter(({ x }) => x > right - OVERLAP + 0.1 && x < right - 0.1);
      const others = chainsOf(there.page, WANTED);
      for (const p of inside) {
        shared += 1;
        expect(fromChains({ x: p.x - step.x, y: p.y }, others)).toBeLessThan(0.01);
      }
      const own = marksOf(here.page).map(({ x, y }) => ({ x: x - step.x, y }));
      const common = marksOf(there.page).filter((m) =>
        own.some((o) => near(o.x, m.x, 0.01) && near(o.y, m.y, 0.01)),
      );
      expect(common).toHaveLength(2);
    }
    expect(shared).toBeGreaterThan(0);
  });

  test('PA24: nothing leaves the printable margin', () => {
    for (const page of pages) {
      const { left, right, top, bottom } = extentOf(page);
      expect(page.widthMm).toBeCloseTo(PAPERS[paper].widthMm, 3);
      expect(page.heightMm).toBeCloseTo(PAPERS[paper].heightMm, 3);
      // A thousandth: coordinates are rounded to that.
      expect(left).toBeGreaterThan(PRINTER_MARGIN - 0.002);
      expect(top).toBeGreaterThan(PRINTER_MARGIN - 0.002);
      expect(right).toBeLessThan(page.widthMm - PRINTER_MARGIN + 0.002);
      expect(bottom).toBeLessThan(page.heightMm - PRINTER_MARGIN + 0.002);
    }
  });

  test('PA22: SVG is drawn from the same sheets, at the same size', () => {
    const svg = toSvg(sheetsOf(input, options, 'front')[1]!);
    expect(svg).toContain(`width="${PAPERS[paper].widthMm}mm"`);
    const ends = [...svg.matchAll(/<line x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="\2"/g)];
    const lengths = ends.map(([, from, , to]) => Number(to) - Number(from));
    expect(lengths.some((each) => near(each, 100, 0.01))).toBe(true);
    expect(lengths.some((each) => near(each, 101.6, 0.01))).toBe(true);
  });
});

test('PA25: tiles that no line crosses are not printed, and the key names them', async () => {
  const sheets = sheetsOf(unplanned('ferry-socks'), A4);
  const pages = await readPdf(await toPdf(sheets, ABOUT));
  const printed = tilesIn(pages).map(({ label }) => label);
  const left = /not printed, as no line falls on them: ([^.]+)\./.exec(pages[0]!.text)?.[1];
  expect(left?.split(', ')).toEqual(['A2']);
  expect(printed).toEqual(['A1', 'B1', 'B2']);
  for (const { page } of tilesIn(pages)) expect(chainsOf(page, WANTED)).not.toEqual([]);
});

describe('with a plan', () => {
  let input: PaperInput;
  beforeAll(() => {
    input = plannedExample('ferry-socks');
  });

  test('PA26: every pin is numbered on the sheets, as the plan has its order and place', async () => {
    const pages = await readPdf(await toPdf(sheetsOf(input, A4), ABOUT));
    const numbers = tilesIn(pages).flatMap(({ page }) =>
      page.words.flatMap(({ text, heightMm }) =>
        near(heightMm, 3.6, 0.1) && /^\d+$/.test(text) ? [Number(text)] : [],
      ),
    );
    const orders = input.plan!.pieces[0]!.pins.map(({ order }) => order);
    expect([...new Set(numbers)].sort((a, b) => a - b)).toEqual(orders);
  });

  test('PA26: crosses lie where the pins do', () => {
    const [plan] = input.plan!.pieces;
    const [piece] = fullSizePieces(input);
    expect(piece!.pins.map(({ at }) => at)).toEqual(
      plan!.pins.map(({ xMm, yMm }) => ({ x: xMm, y: yMm })),
    );
    // A pin stands on the edge that it pins: within the scallop that the plan allows between pins.
    const edge = piece!.lines.at(-1)!.points;
    for (const { at } of piece!.pins) expect(fromChains(at, [edge])).toBeLessThan(2);
  });
});

test('PA27: a piece that is not there is a fault that names those that are', () => {
  const made = fullSize(unplanned('waistcoat'), { ...A4, piece: 'hood' });
  expect(made.ok).toBe(false);
  if (!made.ok)
    expect(made.faults[0]).toMatchObject({ given: 'hood', mend: 'Choose from: front, back.' });
});

test('PA27: without any size there is nothing to draw, and that is said', () => {
  const made = fullSize({ ...unplanned('waistcoat'), asPinned: [] }, A4);
  expect(made.ok).toBe(false);
  if (!made.ok) expect(made.faults[0]?.code).toBe('full-size-no-size');
});
