import type { Point } from '../garment/index.ts';
import { distance, middleOf } from './plane.ts';
import type { MatSpec } from './types.ts';

/** Where a piece lies on the mat. */
export interface OnMat {
  /** From the piece's own coordinates (y up) to the mat's (y down, from its top left corner). */
  readonly place: (p: Point) => Point;
  /** From the mat's coordinates to the piece's own. */
  readonly back: (p: Point) => Point;
  readonly turned: boolean;
  /** Whether the mat is large enough. */
  readonly fits: boolean;
  /** The mat, or what it takes where that is too small. */
  readonly on: MatSpec;
}

type Lay = Pick<OnMat, 'place' | 'back' | 'turned'>;

/** The upright rectangle around places: its sides and its middle. */
export const boxOf = (places: readonly Point[]) => {
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  return {
    width: right - left,
    height: high - low,
    centre: { x: (left + right) / 2, y: (low + high) / 2 },
  };
};

/** A floor without tiles is marked in whole steps of this, mm. */
const MARKED = 100;

/** As many whole tiles as a piece of that size takes, or a rectangle marked on the floor. */
const largeEnough = (width: number, height: number, { tileMm }: MatSpec): MatSpec => {
  const step = tileMm > 0 ? tileMm : MARKED;
  const side = (size: number) => step * Math.ceil(size / step - 1e-9);
  return { widthMm: side(width), heightMm: side(height), tileMm };
};

/**
 * Lays the wanted places in the middle of the mat, a quarter turned where only that fits; on a surface that
 * is large enough where neither does.
 */
export const layOnMat = (wanted: readonly Point[], mat: MatSpec): OnMat => {
  const { width, height, centre } = boxOf(wanted);
  const fitsAs = (w: number, h: number) => w <= mat.widthMm && h <= mat.heightMm;
  const upright = fitsAs(width, height);
  const turned = !upright && fitsAs(height, width);
  const fits = upright || turned;
  const on = fits ? mat : largeEnough(width, height, mat);
  const lay = layAt(centre, { x: on.widthMm / 2, y: on.heightMm / 2 }, turned);
  return { ...lay, fits, on };
};

/** Puts the place `from` of the piece (y up) on `to` of the mat (y down). */
const layAt = (from: Point, to: Point, turned: boolean): Lay => ({
  turned,
  place: ({ x, y }) => {
    const [dx, dy] = turned ? [y - from.y, x - from.x] : [x - from.x, from.y - y];
    return { x: to.x + dx, y: to.y + dy };
  },
  back: ({ x, y }) => {
    const [dx, dy] = turned ? [y - to.y, x - to.x] : [x - to.x, to.y - y];
    return { x: from.x + dx, y: from.y + dy };
  },
});

/** Sum of squares by which places of the piece, so laid that their middles meet, miss those on the mat. */
const misfit = (lay: Lay, from: readonly Point[], to: readonly Point[]): number =>
  from.reduce((sum, p, k) => sum + distance(lay.place(p), to[k]!) ** 2, 0);

/**
 * Lays a piece by what is in the mat already: places of it (y up) over those on the mat, upright or a
 * quarter turned, whichever misses them by less; upright where that is alike.
 */
export const layThrough = (from: readonly Point[], to: readonly Point[]): Lay => {
  const [a, b] = [middleOf(from), middleOf(to)];
  const [upright, turned] = [layAt(a, b, false), layAt(a, b, true)];
  return misfit(turned, from, to) < misfit(upright, from, to) - 1e-6 ? turned : upright;
};

/** Whether places lie on the mat. */
export const onTheMat = (places: readonly Point[], { widthMm, heightMm }: MatSpec): boolean =>
  places.every(({ x, y }) => x >= 0 && y >= 0 && x <= widthMm && y <= heightMm);

export interface Reference {
  readonly name: string;
  readonly at: Point;
}

/** Corners of the mat and crossings of its tiles. */
export const matReferences = ({ widthMm, heightMm, tileMm }: MatSpec): Reference[] => {
  const corners: Reference[] = [
    { name: 'top left corner of the mat', at: { x: 0, y: 0 } },
    { name: 'top right corner of the mat', at: { x: widthMm, y: 0 } },
    { name: 'bottom left corner of the mat', at: { x: 0, y: heightMm } },
    { name: 'bottom right corner of the mat', at: { x: widthMm, y: heightMm } },
  ];
  if (!(tileMm > 0)) return corners;
  const steps = (size: number) => Math.min(60, Math.ceil(size / tileMm - 1e-9) - 1);
  for (let j = 1; j <= steps(heightMm); j++)
    for (let i = 1; i <= steps(widthMm); i++)
      corners.push({
        name: `tile crossing ${i} from the left, ${j} from the top`,
        at: { x: i * tileMm, y: j * tileMm },
      });
  return corners;
};
