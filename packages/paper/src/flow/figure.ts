import type { Mark, PictureType, Place } from '../sheet/sheet.ts';
import { type Block, type Room, slab } from './block.ts';
import { SMALL, setText } from './text-block.ts';

export interface Drawn {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly draw: (at: Place) => readonly Mark[];
}

/** A drawing in the middle of the page's width, whole on one page. */
export const figure =
  (drawn: (room: Room) => Drawn, { aboveMm = 2, keep = false } = {}): Block =>
  (room) => {
    const { widthMm, heightMm, draw } = drawn(room);
    const indent = Math.max(0, (room.widthMm - widthMm) / 2);
    return [slab(heightMm, ({ x, y }) => draw({ x: x + indent, y }), { aboveMm, keep })];
  };

export interface PictureGiven {
  readonly type: PictureType;
  readonly base64: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly caption: string;
}

const CAPTION_GAP = 1;

/** A picture no larger than the page's width and `tallestMm`, its caption under it. */
export const picture =
  ({ type, base64, widthPx, heightPx, caption }: PictureGiven, tallestMm: number): Block =>
  ({ widthMm, faces }) => {
    const scale = Math.min(widthMm / widthPx, tallestMm / heightPx);
    const [width, height] = [widthPx * scale, heightPx * scale];
    const set = setText(caption, widthMm, SMALL, faces);
    const below = caption === '' ? 0 : CAPTION_GAP + set.heightMm;
    return [
      slab(
        height + below,
        ({ x, y }) => [
          { kind: 'picture', x, y, width, height, type, base64, alt: caption },
          ...(caption === '' ? [] : set.draw({ x, y: y + height + CAPTION_GAP })),
        ],
        { aboveMm: 3 },
      ),
    ];
  };
