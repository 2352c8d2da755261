import { fine, INK } from '../sheet/inks.ts';
import { type Block, slab } from './block.ts';
import { BODY, setText, type TextLook } from './text-block.ts';

const PADDING = 2.6;
const LOOK: TextLook = { ...BODY, sizeMm: 3.1 };

/** A boxed text that must not be overlooked, whole on one page. */
export const note =
  (title: string, texts: readonly string[]): Block =>
  ({ widthMm, faces }) => {
    const inner = widthMm - 2 * PADDING;
    const head = setText(title, inner, { ...LOOK, weight: 'strong', colour: INK }, faces);
    const parts = [head, ...texts.map((text) => setText(text, inner, LOOK, faces))];
    const heightMm = parts.reduce((sum, part) => sum + part.heightMm, 2 * PADDING);
    return [
      slab(
        heightMm,
        ({ x, y }) => {
          let top = y + PADDING;
          const texts = parts.flatMap((part) => {
            const marks = part.draw({ x: x + PADDING, y: top });
            top += part.heightMm;
            return marks;
          });
          return [
            {
              kind: 'box',
              x,
              y,
              width: widthMm,
              height: heightMm,
              stroke: { ...fine, widthMm: 0.35 },
            },
            ...texts,
          ];
        },
        { aboveMm: 3.5 },
      ),
    ];
  };
