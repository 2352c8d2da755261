import type { Mark, Place } from '../sheet/sheet.ts';
import type { Faces } from '../type/faces.ts';

/** What a block is laid out in. */
export interface Room {
  readonly widthMm: number;
  readonly faces: Faces;
}

/** Something of a known height that stays whole on one page. */
export interface Slab {
  readonly kind: 'slab';
  readonly heightMm: number;
  /** Blank above it, left out at the top of a page. */
  readonly aboveMm: number;
  /** True: it does not stand last on a page, away from what follows. */
  readonly keep: boolean;
  readonly draw: (at: Place) => readonly Mark[];
}

/** Rows that run down one column, then the next, then over the page, their head repeated each time. */
export interface Rows {
  readonly kind: 'rows';
  readonly aboveMm: number;
  readonly across: number;
  readonly columnMm: number;
  readonly gutterMm: number;
  readonly head: Slab | null;
  readonly rows: readonly Slab[];
}

export type Item = Slab | Rows;

/** Anything that can be set down a page: a heading, a paragraph, a table, a picture. */
export type Block = (room: Room) => readonly Item[];

export const slab = (
  heightMm: number,
  draw: Slab['draw'],
  { aboveMm = 0, keep = false }: { readonly aboveMm?: number; readonly keep?: boolean } = {},
): Slab => ({ kind: 'slab', heightMm, aboveMm, keep, draw });
