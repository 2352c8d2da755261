import { fail, ok, type Result } from '@dryflat/engine/units';
import type { Block } from '../flow/block.ts';
import { figure } from '../flow/figure.ts';
import { flow } from '../flow/flow.ts';
import { heading, list, paragraph } from '../flow/text-block.ts';
import type { PaperInput } from '../input/paper-input.ts';
import { lengthText, type PageOptions } from '../input/telling.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { CHECK_HEIGHT, CHECKS, checkLines } from './check-lines.ts';
import { keyMap } from './key-map.ts';
import { type FullSizePiece, fullSizePieces } from './pieces.ts';
import { tileSheet } from './tile-sheet.ts';
import { OVERLAP, type Tiling, tilesOver } from './tiles.ts';

export interface FullSizeOptions extends PageOptions {
  /** Name of the one piece that is wanted; all where it is left out. */
  readonly piece?: string;
}

const lineWords = ({ lines, pins }: FullSizePiece): string => {
  const both = lines.length > 1;
  const outline = both
    ? 'Solid: wanted. Dashed: as it will lie pinned.'
    : 'The line is the edge as it is to lie pinned.';
  return pins.length === 0 ? outline : `${outline} Crosses: pins, numbered in order.`;
};

const left = ({ tiles }: Tiling): string[] => {
  const labels = tiles.flatMap(({ drawn, label }) => (drawn ? [] : [label]));
  return labels.length === 0
    ? []
    : [
        `Struck through on the key, and not printed, as no line falls on them: ${labels.join(', ')}.`,
      ];
};

const sheetsWord = (count: number) => `${count} sheet${count === 1 ? '' : 's'}`;

const keyBlocks = (piece: FullSizePiece, tiling: Tiling, { units }: PageOptions): Block[] => {
  const printed = tiling.tiles.filter(({ drawn }) => drawn).length;
  return [
    heading(`Full size: ${piece.name}`, 1),
    paragraph(`${sheetsWord(printed)} to print at 100 %, no fitting to page. ${lineWords(piece)}`),
    figure(() => keyMap(piece, tiling, { widthMm: 150, heightMm: 120 }, null)),
    figure(() => ({
      widthMm: CHECKS[1].lengthMm,
      heightMm: CHECK_HEIGHT,
      draw: checkLines,
    })),
    list([
      'Print one sheet first and lay a tape on both lines. Where they are off, look for “actual size” or “100 %” in the print window.',
      `Each sheet repeats ${lengthText(OVERLAP, units)} of its neighbours, as far as the dotted line. Trim one of the two along its thin edge, lay crosses on crosses, and tape them.`,
      ...left(tiling),
      ...(piece.mirrored ? ['There are two of it: turn the paper over for the second.'] : []),
      'Under a wet piece lay film over the paper, or it drinks and grows.',
    ]),
  ];
};

const sheetsOf = (piece: FullSizePiece, input: PaperInput, options: PageOptions): Sheet[] => {
  const tiling = tilesOver(piece, options.paper);
  const title = `${input.name}, full size: ${piece.name}`;
  const look = { ...options, garment: input.name };
  return [
    ...flow(keyBlocks(piece, tiling, options), { ...options, title }),
    ...tiling.tiles
      .filter(({ drawn }) => drawn)
      .map((tile) => tileSheet(piece, tile, tiling, look)),
  ];
};

/**
 * Pieces at 1:1, each with a key first and then its tiles, row by row. Fails where nobody gave a size
 * for any piece, and where there is none of the name asked for.
 */
export const fullSize = (input: PaperInput, options: FullSizeOptions): Result<Sheet[]> => {
  const pieces = fullSizePieces(input);
  if (pieces.length === 0)
    return fail({
      code: 'full-size-no-size',
      field: 'pattern.measurements',
      given: '',
      problem: 'no piece has a size that it could be drawn to',
      mend: 'Give the pattern’s widths and lengths in the size that is knit.',
    });
  const { piece: asked } = options;
  const chosen = asked === undefined ? pieces : pieces.filter(({ name }) => name === asked);
  if (chosen.length === 0)
    return fail({
      code: 'full-size-no-such-piece',
      field: 'piece',
      given: asked ?? '',
      problem: 'it has no piece of this name',
      mend: `Choose from: ${pieces.map(({ name }) => name).join(', ')}.`,
    });
  return ok(chosen.flatMap((piece) => sheetsOf(piece, input, options)));
};
