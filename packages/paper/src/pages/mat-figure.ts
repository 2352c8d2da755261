import type { MatSpec, PiecePlan, PinPlaced } from '@dryflat/engine/blocking';
import { boxOf, joinBoxes, type Point } from '@dryflat/engine/garment';
import type { Block } from '../flow/block.ts';
import { figure } from '../flow/figure.ts';
import { dashed, fine, firm, hair, INK } from '../sheet/inks.ts';
import { polygonPath } from '../sheet/polygon.ts';
import type { Mark, Place } from '../sheet/sheet.ts';

const NUMBER_MM = 2.3;
/** Blank around the mat for numbers of pins on its rim. */
const RIM = 5;
/** Numbers stand this far from their pins, away from the middle of the piece. */
const AWAY = 2.6;
/** A mat without tiles, or of tiles this small, is drawn without lines. */
const LEAST_TILE = 20;

type Onto = (p: Point) => Place;

const steps = (size: number, tile: number): number[] =>
  tile < LEAST_TILE
    ? []
    : Array.from({ length: Math.ceil(size / tile) - 1 }, (_, k) => (k + 1) * tile);

const matMarks = ({ widthMm, heightMm, tileMm }: MatSpec, onto: Onto): Mark[] => {
  const line = (a: Point, b: Point): Mark => ({
    kind: 'line',
    from: onto(a),
    to: onto(b),
    stroke: hair,
  });
  const [corner, opposite] = [onto({ x: 0, y: 0 }), onto({ x: widthMm, y: heightMm })];
  return [
    {
      kind: 'box',
      ...corner,
      width: opposite.x - corner.x,
      height: opposite.y - corner.y,
      stroke: fine,
    },
    ...steps(widthMm, tileMm).map((x) => line({ x, y: 0 }, { x, y: heightMm })),
    ...steps(heightMm, tileMm).map((y) => line({ x: 0, y }, { x: widthMm, y })),
  ];
};

/** A dot for a pin, a T for a T-pin, a bar for a comb, a line for a wire: on paper, `at`. */
export const pinMark = ({ kind, along }: PinPlaced, at: Place, scale: number): Mark[] => {
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

const middleOf = (points: readonly Point[]): Point => {
  const { left, right, top, bottom } = boxOf(points);
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
};

const numberOf = ({ order }: PinPlaced, at: Place, middle: Place): Mark => {
  const [dx, dy] = [at.x - middle.x, at.y - middle.y];
  const length = Math.hypot(dx, dy) || 1;
  return {
    kind: 'text',
    x: at.x + (dx / length) * AWAY,
    y: at.y + (dy / length) * AWAY + 0.35 * NUMBER_MM,
    text: String(order),
    sizeMm: NUMBER_MM,
    weight: 'regular',
    align: 'middle',
    colour: INK,
  };
};

/** The mat with the piece as wanted and as pinned, and its pins by number. */
export const matFigure = (plan: PiecePlan, mat: MatSpec, tallestMm: number): Block =>
  figure(
    ({ widthMm }) => {
      const { wanted, pinned } = plan.outlines;
      const box = joinBoxes([
        boxOf([...wanted, ...pinned, ...plan.pins.map(({ xMm, yMm }) => ({ x: xMm, y: yMm }))]),
        { left: 0, top: 0, right: mat.widthMm, bottom: mat.heightMm },
      ]);
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
          const middle = onto(middleOf(wanted));
          return [
            ...matMarks(mat, onto),
            { kind: 'path', d: polygonPath(wanted.map(onto)), stroke: dashed },
            { kind: 'path', d: polygonPath(pinned.map(onto)), stroke: firm },
            ...plan.pins.flatMap((pin) => {
              const place = onto({ x: pin.xMm, y: pin.yMm });
              return [...pinMark(pin, place, scale), numberOf(pin, place, middle)];
            }),
          ];
        },
      };
    },
    { keep: true },
  );
