import type { Point } from '@dryflat/engine/garment';
import { leading, SMALL, textLine } from '../flow/text-block.ts';
import { dotted, fine, firm, hair, INK } from '../sheet/inks.ts';
import { outwards } from '../sheet/outwards.ts';
import { PAPERS, type PaperName, PRINTER_MARGIN } from '../sheet/paper-size.ts';
import { openPath } from '../sheet/polygon.ts';
import type { Mark, Place, Sheet } from '../sheet/sheet.ts';
import type { Faces } from '../type/faces.ts';
import { wrap } from '../type/wrap.ts';
import { CHECKS, checkLines } from './check-lines.ts';
import { clipped } from './clip.ts';
import { keyMap } from './key-map.ts';
import type { FullSizeLine, FullSizePiece, FullSizePin } from './pieces.ts';
import { OVERLAP, STRIP, type Tile, type Tiling, within } from './tiles.ts';

export interface TileLook {
  readonly paper: PaperName;
  readonly faces: Faces;
  readonly garment: string;
}

const LINES: Readonly<
  Record<FullSizeLine['what'], Extract<Mark, { kind: 'path' }>['stroke'] & object>
> = {
  wanted: firm,
  pinned: { colour: INK, widthMm: 0.3, dash: [2.4, 1.6] },
};

/** Corner of the window on the paper. */
const CORNER: Place = { x: PRINTER_MARGIN, y: PRINTER_MARGIN };

type Onto = (p: Point) => Place;

const ontoPaper =
  ({ window }: Tile): Onto =>
  ({ x, y }) => ({ x: CORNER.x + x - window.x, y: CORNER.y + y - window.y });

/** Chains cut to the window, on the paper. */
const cut = (
  points: readonly Point[],
  tile: Tile,
  stroke: NonNullable<Extract<Mark, { kind: 'path' }>['stroke']>,
): Mark[] =>
  clipped(points, tile.window).map((run) => ({
    kind: 'path',
    d: openPath(run.map(ontoPaper(tile))),
    stroke,
  }));

const ARM = 2.2;
const NUMBER: Readonly<{ sizeMm: number }> = { sizeMm: 3.6 };

/** Ends of what is drawn for a pin: a cross, or its whole length for a comb or a wire. */
const armsOf = ({ pin, at }: FullSizePin): [Point, Point][] => {
  const arm = (dx: number, dy: number): [Point, Point] => [
    { x: at.x - dx, y: at.y - dy },
    { x: at.x + dx, y: at.y + dy },
  ];
  const cross = [arm(ARM, 0), arm(0, ARM)];
  if (pin.along === null) return cross;
  const half = pin.along.lengthMm / 2;
  return [...cross, arm(pin.along.dx * half, pin.along.dy * half)];
};

/** From a pin to the middle of its number, mm. */
const AWAY = 4.6;

/** The number outside the piece, moved so far as to stand whole in the window. */
const numberOf = (
  { pin, at }: FullSizePin,
  outline: readonly Point[],
  tile: Tile,
  faces: Faces,
): Mark => {
  const text = String(pin.order);
  const half = { x: faces.widthOf(text, NUMBER.sizeMm, 'strong') / 2, y: leading(NUMBER) / 2 };
  const out = outwards(outline, at);
  const { x: left, y: top, width, height } = tile.window;
  const held = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
  const corner = {
    x: held(at.x + out.x * AWAY, left + half.x, left + width - half.x),
    y: held(at.y + out.y * AWAY, top + half.y, top + height - half.y) - half.y,
  };
  const look = { ...NUMBER, weight: 'strong', colour: INK } as const;
  return textLine(text, ontoPaper(tile)(corner), look, 'middle');
};

const pinMarks = ({ pins, lines }: FullSizePiece, tile: Tile, faces: Faces): Mark[] =>
  pins.flatMap((each) => [
    ...armsOf(each).flatMap((arm) => cut(arm, tile, { colour: INK, widthMm: 0.3 })),
    ...(within(each.at, tile.window)
      ? [numberOf(each, (lines.at(-1)?.points ?? []).slice(1), tile, faces)]
      : []),
  ]);

/** A cross in a ring in each corner, in the middle of what this tile shares with its neighbours. */
const alignmentMarks = ({ window: { width, height } }: Tile): Mark[] =>
  [OVERLAP / 2, width - OVERLAP / 2].flatMap((dx) =>
    [OVERLAP / 2, height - OVERLAP / 2].flatMap((dy): Mark[] => {
      const at = { x: CORNER.x + dx, y: CORNER.y + dy };
      return [
        { kind: 'dot', ...at, radius: 1.5, stroke: fine },
        { kind: 'line', from: { ...at, x: at.x - 3 }, to: { ...at, x: at.x + 3 }, stroke: fine },
        { kind: 'line', from: { ...at, y: at.y - 3 }, to: { ...at, y: at.y + 3 }, stroke: fine },
      ];
    }),
  );

/** The window's own edge to trim along, and dotted how far each neighbour reaches into it. */
const edges = (
  { row, column, window: { width, height } }: Tile,
  { rows, columns }: Tiling,
): Mark[] => {
  const [right, bottom] = [CORNER.x + width, CORNER.y + height];
  const upright = (x: number): Mark => ({
    kind: 'line',
    from: { x, y: CORNER.y },
    to: { x, y: bottom },
    stroke: dotted,
  });
  const level = (y: number): Mark => ({
    kind: 'line',
    from: { x: CORNER.x, y },
    to: { x: right, y },
    stroke: dotted,
  });
  return [
    { kind: 'box', ...CORNER, width, height, stroke: hair },
    ...(column > 0 ? [upright(CORNER.x + OVERLAP)] : []),
    ...(column < columns - 1 ? [upright(right - OVERLAP)] : []),
    ...(row > 0 ? [level(CORNER.y + OVERLAP)] : []),
    ...(row < rows - 1 ? [level(bottom - OVERLAP)] : []),
  ];
};

const KEY = { widthMm: 46, heightMm: STRIP - 4 };
const GAP = 4;

const strip = (piece: FullSizePiece, tile: Tile, tiling: Tiling, look: TileLook): Mark[] => {
  const { widthMm, heightMm } = PAPERS[look.paper];
  const top = heightMm - PRINTER_MARGIN - STRIP + 3;
  const key = keyMap(piece, tiling, KEY, tile.label);
  const left = PRINTER_MARGIN + CHECKS[1].lengthMm + GAP;
  const right = widthMm - PRINTER_MARGIN;
  const room = right - key.widthMm - GAP - left;
  const said = [
    look.garment,
    `${piece.name}, full size`,
    'Print at 100 %, no fitting to page.',
  ].flatMap((text, k) => {
    const lines = wrap(text, room, SMALL, look.faces);
    return k === 0 ? lines.slice(0, 1) : lines;
  });
  return [
    ...checkLines({ x: PRINTER_MARGIN + 0.5, y: top }),
    textLine(tile.label, { x: left, y: top - 1 }, { sizeMm: 7, weight: 'strong', colour: INK }),
    ...said.map((text, k) =>
      textLine(text, { x: left, y: top + 8 + k * 3.6 }, { ...SMALL, colour: INK }),
    ),
    ...key.draw({ x: right - key.widthMm, y: top }),
  ];
};

/** One tile at 1:1 with its strip below it. */
export const tileSheet = (
  piece: FullSizePiece,
  tile: Tile,
  tiling: Tiling,
  look: TileLook,
): Sheet => ({
  ...PAPERS[look.paper],
  title: `Full size: ${piece.name}, ${tile.label}`,
  marks: [
    ...edges(tile, tiling),
    ...alignmentMarks(tile),
    ...piece.lines.flatMap(({ points, what }) => cut(points, tile, LINES[what])),
    ...pinMarks(piece, tile, look.faces),
    ...strip(piece, tile, tiling, look),
  ],
});
