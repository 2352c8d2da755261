import type { MatStep, MatWork } from '@dryflat/record';
import { referencePlace } from '../mat/tape-now.ts';

export type Xy = readonly [number, number];

/** Corners of the piece on the mat, as kept with the work; of its steps where it was kept without. */
export const outlineOf = ({ lies, steps }: Pick<MatWork, 'lies' | 'steps'>): Xy[] =>
  lies === undefined
    ? steps.map(({ xMm, yMm }) => [xMm, yMm])
    : Array.from({ length: lies.outline.length >> 1 }, (_, k) => [
        lies.outline[2 * k]!,
        lies.outline[2 * k + 1]!,
      ]);

/** Where the two references of a step stand on the mat; null for one that is not known. */
export const referencesOf = (
  { steps, lies }: Pick<MatWork, 'steps' | 'lies'>,
  { from }: MatStep,
): (Xy | null)[] => {
  const pinAt = (order: number): Xy | null => {
    const step = steps[order - 1];
    return step ? [step.xMm, step.yMm] : null;
  };
  const mat = lies?.mat ?? { widthMm: 0, heightMm: 0, tileMm: 0 };
  return from.map(({ name }) =>
    lies === undefined && !/^pin /.test(name) ? null : referencePlace(name, pinAt, mat),
  );
};

export interface StepFrame {
  /** Of the left top of the drawing, mm. */
  readonly x: number;
  readonly y: number;
  /** px per mm */
  readonly scale: number;
}

/** The scale at which these places are all in sight, in the middle, with `margin` px around. */
export const frameAround = (
  places: readonly Xy[],
  { width, height }: { readonly width: number; readonly height: number },
  margin: number,
): StepFrame => {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const room = (size: number): number => Math.max(20, size - 2 * margin);
  const scale = Math.min(
    room(width) / Math.max(1, right - left),
    room(height) / Math.max(1, bottom - top),
  );
  return {
    x: (left + right) / 2 - width / 2 / scale,
    y: (top + bottom) / 2 - height / 2 / scale,
    scale,
  };
};
