import { fine, hair, INK, QUIET } from '../sheet/inks.ts';
import type { Align, Mark, Place, Weight } from '../sheet/sheet.ts';
import type { Faces } from '../type/faces.ts';
import { type Block, type Slab, slab } from './block.ts';
import { BODY, leading, SMALL, setText, type TextLook } from './text-block.ts';

export interface Column {
  readonly title: string;
  /** Its part of the width; parts need not sum to anything. */
  readonly part: number;
  readonly align?: Align;
}

/** A text, or a box to write or tick in: as wide as its column where `widthMm` is left out. */
export type Cell =
  | string
  | { readonly text: string; readonly weight?: Weight; readonly quiet?: boolean }
  | { readonly box: { readonly widthMm?: number; readonly heightMm: number } };

export interface TableLook {
  /** Columns of rows side by side. */
  readonly across?: number;
  readonly sizeMm?: number;
  readonly aboveMm?: number;
}

const GUTTER = 8;
/** Blank above and below the text of a row, and between two columns. */
const PADDING = 0.9;
const BETWEEN = 2.4;

interface SetCell {
  readonly heightMm: number;
  readonly draw: (at: Place) => readonly Mark[];
}

const setBox = (
  { widthMm, heightMm }: { readonly widthMm?: number; readonly heightMm: number },
  columnMm: number,
): SetCell => ({
  heightMm,
  draw: ({ x, y }) => [
    { kind: 'box', x, y, width: widthMm ?? columnMm, height: heightMm, stroke: fine },
  ],
});

const setCell = (
  cell: Cell,
  widthMm: number,
  align: Align,
  look: TextLook,
  faces: Faces,
): SetCell => {
  if (typeof cell !== 'string' && 'box' in cell) return setBox(cell.box, widthMm);
  const {
    text,
    weight = look.weight,
    quiet = false,
  } = typeof cell === 'string' ? { text: cell } : cell;
  const colour = quiet ? QUIET : look.colour;
  return setText(text, widthMm, { ...look, weight, colour }, faces, align);
};

/** Left edges and widths of columns in `widthMm`. */
const measuresOf = (
  columns: readonly Column[],
  widthMm: number,
): { x: number; width: number }[] => {
  const parts = columns.reduce((sum, { part }) => sum + part, 0);
  const free = widthMm - BETWEEN * (columns.length - 1);
  let x = 0;
  return columns.map(({ part }) => {
    const width = (free * part) / parts;
    const here = { x, width };
    x += width + BETWEEN;
    return here;
  });
};

/** A row with a line under it; boxes are as far from the lines as texts are. */
const rowOf = (
  cells: readonly Cell[],
  columns: readonly Column[],
  widthMm: number,
  look: TextLook,
  faces: Faces,
  strong: boolean,
): Slab => {
  const measures = measuresOf(columns, widthMm);
  const set = cells.map((cell, k) =>
    setCell(cell, measures[k]!.width, columns[k]!.align ?? 'start', look, faces),
  );
  const heightMm = Math.max(leading(look), ...set.map((each) => each.heightMm)) + 2 * PADDING;
  return slab(heightMm, ({ x, y }) => [
    ...set.flatMap((cell, k) =>
      cell.draw({ x: x + measures[k]!.x, y: y + (heightMm - cell.heightMm) / 2 }),
    ),
    {
      kind: 'line',
      from: { x, y: y + heightMm },
      to: { x: x + widthMm, y: y + heightMm },
      stroke: strong ? { ...fine, colour: INK } : hair,
    },
  ]);
};

/** A table that runs over pages, its titles repeated. Every row has a cell for each column. */
export const table =
  (
    columns: readonly Column[],
    rows: readonly (readonly Cell[])[],
    { across = 1, sizeMm = BODY.sizeMm, aboveMm = 1.5 }: TableLook = {},
  ): Block =>
  ({ widthMm, faces }) => {
    if (rows.length === 0) return [];
    const columnMm = (widthMm - GUTTER * (across - 1)) / across;
    const look = { ...BODY, sizeMm };
    const titles = columns.map(({ title }) => title);
    return [
      {
        kind: 'rows',
        aboveMm,
        across,
        columnMm,
        gutterMm: GUTTER,
        head: titles.every((title) => title === '')
          ? null
          : rowOf(
              titles,
              columns,
              columnMm,
              { ...SMALL, sizeMm: Math.min(SMALL.sizeMm, sizeMm) },
              faces,
              true,
            ),
        rows: rows.map((row) => rowOf(row, columns, columnMm, look, faces, false)),
      },
    ];
  };
