import { hair } from '../sheet/inks.ts';
import type { PaperName } from '../sheet/paper-size.ts';
import { PAPERS } from '../sheet/paper-size.ts';
import type { Mark, Sheet } from '../sheet/sheet.ts';
import type { Faces } from '../type/faces.ts';
import { wrap } from '../type/wrap.ts';
import type { Block, Item, Slab } from './block.ts';
import { fill } from './columns.ts';
import { SMALL, textLine } from './text-block.ts';

export interface PageFrame {
  readonly paper: PaperName;
  readonly faces: Faces;
  /** Stands at the foot of every page, and is the title of its sheet. */
  readonly title: string;
}

/** Blank around a page that is read, mm. */
export const PAGE_MARGIN = 14;
const FOOT = 7;
const PAGE_NUMBER = 24;

/** Height that a page of that paper has for its blocks, mm. */
export const pageHeight = (paper: PaperName): number =>
  PAPERS[paper].heightMm - 2 * PAGE_MARGIN - FOOT;

/** The page being filled, and those that are full. */
class Pages {
  readonly full: Mark[][] = [];
  private marks: Mark[] = [];
  private y = 0;
  private readonly heightMm: number;

  constructor(heightMm: number) {
    this.heightMm = heightMm;
  }

  get free(): number {
    return this.heightMm - this.y;
  }

  get fresh(): boolean {
    return this.y === 0;
  }

  turn(): void {
    this.full.push(this.marks);
    this.marks = [];
    this.y = 0;
  }

  set(
    heightMm: number,
    aboveMm: number,
    draw: (at: { x: number; y: number }) => readonly Mark[],
  ): void {
    const above = this.fresh ? 0 : aboveMm;
    if (this.fresh && heightMm > this.heightMm)
      throw new RangeError('a block is taller than a page');
    this.marks.push(...draw({ x: PAGE_MARGIN, y: PAGE_MARGIN + this.y + above }));
    this.y += above + heightMm;
  }

  done(): Mark[][] {
    return this.fresh ? this.full : [...this.full, this.marks];
  }
}

/** Height of an item that must not be torn from what it is kept with: of rows, the head and the first. */
const leastOf = (item: Item): number =>
  item.aboveMm +
  (item.kind === 'slab'
    ? item.heightMm
    : (item.head?.heightMm ?? 0) + (item.rows[0]?.heightMm ?? 0));

/** Height of a kept run: the item, and those after it as long as each is kept with the next. */
const keptHeight = (items: readonly Item[], from: number): number => {
  let height = 0;
  for (let k = from; k < items.length; k++) {
    const item = items[k]!;
    height += leastOf(item);
    if (item.kind === 'rows' || !item.keep) break;
  }
  return height;
};

const setRows = (pages: Pages, item: Extract<Item, { kind: 'rows' }>): void => {
  let rows: readonly Slab[] = item.rows;
  while (rows.length > 0) {
    const filled = fill({ ...item, rows }, pages.free - (pages.fresh ? 0 : item.aboveMm));
    if (filled.rest.length === rows.length) {
      if (pages.fresh) throw new RangeError('a row of a table is taller than the page');
      pages.turn();
      continue;
    }
    pages.set(filled.heightMm, item.aboveMm, filled.draw);
    rows = filled.rest;
    if (rows.length > 0) pages.turn();
  }
};

const foot = (frame: PageFrame, page: number, of: number): Mark[] => {
  const { widthMm, heightMm } = PAPERS[frame.paper];
  const y = heightMm - PAGE_MARGIN - SMALL.sizeMm;
  const right = widthMm - PAGE_MARGIN;
  const [title] = wrap(frame.title, right - PAGE_MARGIN - PAGE_NUMBER, SMALL, frame.faces);
  return [
    {
      kind: 'line',
      from: { x: PAGE_MARGIN, y: y - 1.6 },
      to: { x: right, y: y - 1.6 },
      stroke: hair,
    },
    textLine(title!, { x: PAGE_MARGIN, y }, SMALL),
    textLine(`${page} of ${of}`, { x: right, y }, SMALL, 'end'),
  ];
};

/** Blocks set down one page after another, each page with its foot. No blocks give no pages. */
export const flow = (blocks: readonly Block[], frame: PageFrame): Sheet[] => {
  const { widthMm, heightMm } = PAPERS[frame.paper];
  const room = { widthMm: widthMm - 2 * PAGE_MARGIN, faces: frame.faces };
  const pages = new Pages(pageHeight(frame.paper));
  const items = blocks.flatMap((block) => block(room));
  items.forEach((item, k) => {
    if (!pages.fresh && keptHeight(items, k) > pages.free) pages.turn();
    if (item.kind === 'rows') setRows(pages, item);
    else pages.set(item.heightMm, item.aboveMm, item.draw);
  });
  const full = pages.done();
  return full.map((marks, k) => ({
    widthMm,
    heightMm,
    title: `${frame.title}, page ${k + 1}`,
    marks: [...marks, ...foot(frame, k + 1, full.length)],
  }));
};
