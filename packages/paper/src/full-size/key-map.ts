import { textLine } from '../flow/text-block.ts';
import { fine, hair, INK, QUIET } from '../sheet/inks.ts';
import { openPath } from '../sheet/polygon.ts';
import type { Mark, Place } from '../sheet/sheet.ts';
import type { FullSizePiece } from './pieces.ts';
import { OVERLAP, type Tile, type Tiling } from './tiles.ts';

export interface KeyMap {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly draw: (at: Place) => Mark[];
}

/** Labels smaller than this cannot be read and are left out, mm. */
const LEAST_LABEL = 1.6;

/** All tiles small, with the piece over them, the tiles that are not printed struck through, and one shaded. */
export const keyMap = (
  piece: FullSizePiece,
  { tiles, whole, rows, columns }: Tiling,
  most: { readonly widthMm: number; readonly heightMm: number },
  shaded: string | null,
): KeyMap => {
  const scale = Math.min(most.widthMm / whole.width, most.heightMm / whole.height);
  // Cells meet in the middle of what two tiles share.
  const step = {
    x: (scale * (whole.width - OVERLAP)) / columns,
    y: (scale * (whole.height - OVERLAP)) / rows,
  };
  const inset = (scale * OVERLAP) / 2;
  const labelMm = Math.min(4, step.x / 2.6, step.y / 1.6);
  const cell = (at: Place, { row, column, label, drawn }: Tile): Mark[] => {
    const corner = { x: at.x + inset + column * step.x, y: at.y + inset + row * step.y };
    const opposite = { x: corner.x + step.x, y: corner.y + step.y };
    const middle = { x: corner.x + step.x / 2, y: corner.y + step.y / 2 - 0.6 * labelMm };
    const look = { sizeMm: labelMm, weight: 'regular', colour: drawn ? INK : QUIET } as const;
    return [
      {
        kind: 'box',
        ...corner,
        width: step.x,
        height: step.y,
        stroke: hair,
        ...(label === shaded ? { fill: '#d0d0d0' } : {}),
      },
      ...(drawn ? [] : [{ kind: 'line', from: corner, to: opposite, stroke: hair } as const]),
      ...(labelMm < LEAST_LABEL ? [] : [textLine(label, middle, look, 'middle')]),
    ];
  };
  return {
    widthMm: whole.width * scale,
    heightMm: whole.height * scale,
    draw: (at) => [
      ...tiles.flatMap((tile) => cell(at, tile)),
      ...piece.lines
        .filter(({ what }) => what === 'wanted')
        .map(
          ({ points }): Mark => ({
            kind: 'path',
            d: openPath(
              points.map(({ x, y }) => ({
                x: at.x + (x - whole.x) * scale,
                y: at.y + (y - whole.y) * scale,
              })),
            ),
            stroke: { ...fine, colour: INK },
          }),
        ),
    ],
  };
};
