import type { Point } from '../garment/index.ts';
import type { MatSpec } from './types.ts';

/** Where a piece lies on the mat. */
export interface OnMat {
  /** From the piece's own coordinates (y up) to the mat's (y down, from its top left corner). */
  readonly place: (p: Point) => Point;
  readonly turned: boolean;
  readonly fits: boolean;
}

/** Lays the wanted places in the middle of the mat, a quarter turned where only that fits. */
export const layOnMat = (wanted: readonly Point[], mat: MatSpec): OnMat => {
  const xs = wanted.map(({ x }) => x);
  const ys = wanted.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const [width, height] = [right - left, high - low];
  const fitsAs = (w: number, h: number) => w <= mat.widthMm && h <= mat.heightMm;
  const upright = fitsAs(width, height);
  const turned = !upright && fitsAs(height, width);
  const [cx, cy] = [(left + right) / 2, (low + high) / 2];
  const place = ({ x, y }: Point): Point => {
    const [dx, dy] = turned ? [y - cy, x - cx] : [x - cx, cy - y];
    return { x: mat.widthMm / 2 + dx, y: mat.heightMm / 2 + dy };
  };
  return { place, turned, fits: upright || turned };
};

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
