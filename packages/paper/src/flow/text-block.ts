import { INK, QUIET } from '../sheet/inks.ts';
import type { Mark, Place, TextMark, Weight } from '../sheet/sheet.ts';
import type { Faces } from '../type/faces.ts';
import { wrap } from '../type/wrap.ts';
import { type Block, slab } from './block.ts';

export interface TextLook {
  readonly sizeMm: number;
  readonly weight: Weight;
  readonly colour: string;
}

/** Type sizes of a page, mm: 3.4 mm is 9.6 points, as in a printed book. */
export const BODY: TextLook = { sizeMm: 3.4, weight: 'regular', colour: INK };
export const SMALL: TextLook = { sizeMm: 2.8, weight: 'regular', colour: QUIET };
const TITLE: TextLook = { sizeMm: 6.4, weight: 'strong', colour: INK };
const HEADING: TextLook = { sizeMm: 4.4, weight: 'strong', colour: INK };

/** Line to line, as a share of the type's height. */
const LEADING = 1.32;
/** From the top of a line to its baseline. */
const BASELINE = 0.98;

export const leading = ({ sizeMm }: { readonly sizeMm: number }): number => LEADING * sizeMm;

/** One line, its top at `y`. */
export const textLine = (
  text: string,
  { x, y }: Place,
  look: TextLook,
  align: TextMark['align'] = 'start',
): TextMark => ({ kind: 'text', x, y: y + BASELINE * look.sizeMm, text, align, ...look });

export interface SetText {
  readonly heightMm: number;
  readonly draw: (at: Place) => Mark[];
}

/** A text broken to a width. */
export const setText = (
  text: string,
  widthMm: number,
  look: TextLook,
  faces: Faces,
  align: TextMark['align'] = 'start',
): SetText => {
  const lines = wrap(text, widthMm, look, faces);
  const shift = { start: 0, middle: widthMm / 2, end: widthMm }[align];
  return {
    heightMm: lines.length * leading(look),
    draw: ({ x, y }) =>
      lines.map((line, k) =>
        textLine(line, { x: x + shift, y: y + k * leading(look) }, look, align),
      ),
  };
};

/** A title or a heading; it never stands last on a page. */
export const heading =
  (text: string, level: 1 | 2): Block =>
  ({ widthMm, faces }) => {
    const set = setText(text, widthMm, level === 1 ? TITLE : HEADING, faces);
    return [slab(set.heightMm + 1, set.draw, { aboveMm: level === 1 ? 0 : 4, keep: true })];
  };

export interface ParagraphLook extends Partial<TextLook> {
  readonly aboveMm?: number;
  readonly keep?: boolean;
}

/** A paragraph: every line may stand on a page of its own, so that a long one runs over. */
export const paragraph =
  (text: string, { aboveMm = 1.4, keep = false, ...look }: ParagraphLook = {}): Block =>
  ({ widthMm, faces }) => {
    const full: TextLook = { ...BODY, ...look };
    return wrap(text, widthMm, full, faces).map((line, k) =>
      slab(leading(full), (at) => [textLine(line, at, full)], {
        aboveMm: k === 0 ? aboveMm : 0,
        keep,
      }),
    );
  };

const BULLET = 3.6;

/** Points of a list, each with a dash before it. */
export const list =
  (texts: readonly string[], look: Partial<TextLook> = {}): Block =>
  ({ widthMm, faces }) => {
    const full: TextLook = { ...BODY, ...look };
    return texts.map((text) => {
      const set = setText(text, widthMm - BULLET, full, faces);
      return slab(
        set.heightMm,
        ({ x, y }) => [textLine('–', { x, y }, full), ...set.draw({ x: x + BULLET, y })],
        { aboveMm: 0.6 },
      );
    });
  };
