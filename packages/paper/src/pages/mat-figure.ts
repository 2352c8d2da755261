import type { MatSpec, PiecePlan, PinPlaced } from '@dryflat/engine/blocking';
import { type Box, boxOf, joinBoxes, type Point } from '@dryflat/engine/garment';
import type { Block } from '../flow/block.ts';
import { figure } from '../flow/figure.ts';
import { SMALL, textLine } from '../flow/text-block.ts';
import { dashed, fine, firm, hair, INK } from '../sheet/inks.ts';
import { outwards } from '../sheet/outwards.ts';
import { polygonPath } from '../sheet/polygon.ts';
import type { Mark, Place } from '../sheet/sheet.ts';

const NUMBER_MM = 2.3;
/** Blank around the mat for numbers of pins on its rim. */
const RIM = 5;
/** Numbers stand this far from their pins, outside the piece. */
const AWAY = 2.6;
/** A mat without tiles, or of tiles this small, is drawn without lines. */
const LEAST_TILE = 20;

type Onto = (p: Point) => Place;

/** Lines between tiles across a side of the mat, each with its count from the left or the top. */
const tileLines = (sizeMm: number, tileMm: number): { at: number; count: number }[] =>
  tileMm < LEAST_TILE
    ? []
    : Array.from({ length: Math.ceil(sizeMm / tileMm) - 1 }, (_, k) => ({
        at: (k + 1) * tileMm,
        count: k + 1,
      }));

const inside = (value: number, low: number, high: number): boolean => value >= low && value <= high;

/** The mat as far as it is shown, its tile lines counted along the top and the left. */
const matMarks = (mat: MatSpec, shown: Box, onto: Onto): Mark[] => {
  const part = {
    left: Math.max(0, shown.left),
    top: Math.max(0, shown.top),
    right: Math.min(mat.widthMm, shown.right),
    bottom: Math.min(mat.heightMm, shown.bottom),
  };
  const line = (a: Point, b: Point, stroke = hair): Mark => ({
    kind: 'line',
    from: onto(a),
    to: onto(b),
    stroke,
  });
  const upright = (x: number, stroke = hair) =>
    line({ x, y: part.top }, { x, y: part.bottom }, stroke);
  const level = (y: number, stroke = hair) =>
    line({ x: part.left, y }, { x: part.right, y }, stroke);
  const rims = [
    ...[0, mat.widthMm]
      .filter((x) => inside(x, part.left, part.right))
      .map((x) => upright(x, fine)),
    ...[0, mat.heightMm].filter((y) => inside(y, part.top, part.bottom)).map((y) => level(y, fine)),
  ];
  const across = tileLines(mat.widthMm, mat.tileMm).filter(({ at }) =>
    inside(at, part.left, part.right),
  );
  const down = tileLines(mat.heightMm, mat.tileMm).filter(({ at }) =>
    inside(at, part.top, part.bottom),
  );
  const counted = (count: number, { x, y }: Place): Mark =>
    textLine(String(count), { x, y: y - 1.4 }, { ...SMALL, sizeMm: NUMBER_MM }, 'middle');
  return [
    ...rims,
    ...across.map(({ at }) => upright(at)),
    ...down.map(({ at }) => level(at)),
    ...across.map(({ at, count }) => {
      const { x, y } = onto({ x: at, y: part.top });
      return counted(count, { x, y: y - 2.2 });
    }),
    ...down.map(({ at, count }) => {
      const { x, y } = onto({ x: part.left, y: at });
      return counted(count, { x: x - 2.2, y });
    }),
  ];
};

/** Around the piece to the tile lines that enclose it and half a tile more; all of a mat without tiles. */
const shownOf = ({ outlines, pins }: PiecePlan, { widthMm, heightMm, tileMm }: MatSpec): Box => {
  const piece = boxOf([
    ...outlines.wanted,
    ...outlines.pinned,
    ...pins.map(({ xMm, yMm }) => ({ x: xMm, y: yMm })),
  ]);
  if (tileMm < LEAST_TILE)
    return joinBoxes([piece, { left: 0, top: 0, right: widthMm, bottom: heightMm }]);
  const half = tileMm / 2;
  const before = (value: number) => Math.max(0, Math.floor(value / tileMm) * tileMm - half);
  const after = (value: number) => Math.ceil(value / tileMm) * tileMm + half;
  return joinBoxes([
    piece,
    {
      left: before(piece.left),
      top: before(piece.top),
      right: Math.min(widthMm, after(piece.right)),
      bottom: Math.min(heightMm, after(piece.bottom)),
    },
  ]);
};

/** A dot for a pin, a T for a T-pin, a bar for a comb, a line for a wire: on paper, `at`. */
const pinMark = ({ kind, along }: PinPlaced, at: Place, scale: number): Mark[] => {
  if (along !== null) {
    const half = (along.lengthMm * scale) / 2;
    return [
      {
        kind: 'line',
        from: { x: at.x - along.dx * half, y: at.y - along.dy * half },
        to: { x: at.x + along.dx * half, y: at.y + along.dy * half },
        stroke: { colour: INK, widthMm: kind === 'comb' ? 1.1 : 0.5 },
      },
    ];
  }
  if (kind === 'straight') return [{ kind: 'dot', ...at, radius: 0.7, fill: INK }];
  const stroke = { colour: INK, widthMm: 0.5 };
  return [
    { kind: 'line', from: { x: at.x - 1.2, y: at.y }, to: { x: at.x + 1.2, y: at.y }, stroke },
    { kind: 'line', from: at, to: { x: at.x, y: at.y + 1.7 }, stroke },
  ];
};

const numberOf = ({ order }: PinPlaced, at: Place, out: Point): Mark => ({
  kind: 'text',
  x: at.x + out.x * AWAY,
  y: at.y + out.y * AWAY + 0.35 * NUMBER_MM,
  text: String(order),
  sizeMm: NUMBER_MM,
  weight: 'regular',
  align: 'middle',
  colour: INK,
});

/** The mat with the piece as wanted and as pinned, and its pins by number. */
export const matFigure = (plan: PiecePlan, mat: MatSpec, tallestMm: number): Block =>
  figure(
    ({ widthMm }) => {
      const { wanted, pinned } = plan.outlines;
      const box = shownOf(plan, mat);
      const [width, height] = [box.right - box.left, box.bottom - box.top];
      const scale = Math.min((widthMm - 2 * RIM) / width, (tallestMm - 2 * RIM) / height);
      return {
        widthMm: width * scale + 2 * RIM,
        heightMm: height * scale + 2 * RIM,
        draw: (at) => {
          const onto: Onto = ({ x, y }) => ({
            x: at.x + RIM + (x - box.left) * scale,
            y: at.y + RIM + (y - box.top) * scale,
          });
          return [
            ...matMarks(mat, box, onto),
            { kind: 'path', d: polygonPath(wanted.map(onto)), stroke: dashed },
            { kind: 'path', d: polygonPath(pinned.map(onto)), stroke: firm },
            ...plan.pins.flatMap((pin) => {
              const at = { x: pin.xMm, y: pin.yMm };
              return [
                ...pinMark(pin, onto(at), scale),
                numberOf(pin, onto(at), outwards(pinned, at)),
              ];
            }),
          ];
        },
      };
    },
    { keep: true },
  );
