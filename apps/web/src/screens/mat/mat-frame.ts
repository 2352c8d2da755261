import type { MatSpec } from '@dryflat/engine/blocking';
import type { Planned } from '../../worker/mat/index.ts';

/** The part of the mat that is drawn, mm, and how many px a millimetre is. */
export interface MatFrame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
}

/** Around the piece there is room for a finger and a number, px. */
const MARGIN = 40;
/** The whole piece is in sight; `closer` is twice as large, to be scrolled. */
const CLOSER = 2;

/** The piece as it lies, as it is wanted and as it is pinned, with room around, in `width` px. */
export const frameOf = (
  { plan }: Planned,
  width: number,
  tallest: number,
  closer: boolean,
): MatFrame => {
  const all = [...plan.outlines.rest, ...plan.outlines.wanted, ...plan.outlines.pinned];
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const room = Math.max(80, width - 2 * MARGIN);
  const fit = Math.min(room / (right - left), Math.max(80, tallest - 2 * MARGIN) / (bottom - top));
  const scale = fit * (closer ? CLOSER : 1);
  const margin = MARGIN / scale;
  return {
    x: left - margin,
    y: top - margin,
    width: right - left + 2 * margin,
    height: bottom - top + 2 * margin,
    scale,
  };
};

/** Lines between the tiles of the mat that are in sight, as a path in px. */
export const tileLines = (frame: MatFrame, { widthMm, heightMm, tileMm }: MatSpec): string => {
  const px = (x: number): number => (x - frame.x) * frame.scale;
  const py = (y: number): number => (y - frame.y) * frame.scale;
  const steps = (size: number): number[] =>
    tileMm > 0
      ? Array.from({ length: Math.ceil(size / tileMm - 1e-9) + 1 }, (_, i) =>
          Math.min(i * tileMm, size),
        )
      : [0, size];
  return [
    ...steps(widthMm).map((x) => `M${px(x)} ${py(0)}V${py(heightMm)}`),
    ...steps(heightMm).map((y) => `M${px(0)} ${py(y)}H${px(widthMm)}`),
  ].join('');
};

/** A closed outline as a path in px. */
export const outlinePath = (
  points: readonly { readonly x: number; readonly y: number }[],
  frame: MatFrame,
): string =>
  points.length === 0
    ? ''
    : `M${points
        .map(
          ({ x, y }) =>
            `${((x - frame.x) * frame.scale).toFixed(1)} ${((y - frame.y) * frame.scale).toFixed(1)}`,
        )
        .join('L')}Z`;
