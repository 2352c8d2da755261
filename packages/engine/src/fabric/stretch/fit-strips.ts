import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { EXTENSION_ROWS, type LoadPoint, type MeasuredRow } from '../extension-data.ts';
import { loadAt } from './law.ts';
import { readExtension, type Strip } from './strip.ts';

/**
 * Fits a strip to one row of the load-extension table by least squares in extension. Used by the
 * script that makes strips.ts and by its test; not part of the app.
 */

/** A strip that is counted from a frame far from rest fits no better: preStretch costs this. */
const PRE_STRETCH_SCALE = 0.35;
/**
 * Nor is one counted from a rest that nobody saw: at most a fifth below the first frame, about as far as the
 * readings of any row ask for but one (acrylic rib across, which would have 0.74 and is met less well for it).
 */
const MOST_PRE_STRETCH = 0.2;
/** What the first frame may carry, N/mm ("a few N/m"). */
const MOST_PRELOAD = 0.0045;

const unpack = ([slope, stiffening, limit, pre]: readonly number[]): Strip => ({
  slope: Math.exp(slope!),
  stiffening: Math.exp(stiffening!),
  limit: Math.exp(limit!),
  preStretch: Math.exp(pre!),
});

/** Residual rows: the readings in points of extension, then two that keep preStretch modest. */
const modelOf = (points: readonly LoadPoint[]) => (parameters: number[]) => {
  const strip = unpack(parameters);
  const over = Math.min(Math.max(0, loadAt(strip, strip.preStretch) / MOST_PRELOAD - 1), 10);
  return (k: number): number => {
    const point = points[k];
    if (point !== undefined) return 100 * readExtension(strip, point.load);
    return k === points.length ? strip.preStretch / PRE_STRETCH_SCALE : 20 * over;
  };
};

export interface FittedStrip {
  readonly strip: Strip;
  /** Fitted less read, in points of extension (percent of length), for every load read. */
  readonly residuals: readonly number[];
  readonly worst: number;
}

export const fitStrip = (
  row: MeasuredRow,
  points: readonly LoadPoint[] = row.points,
): FittedStrip => {
  const last = points[points.length - 1]!.extension;
  const fits = [1.15, 1.5].flatMap((far) =>
    [0.5, 1.2].map((soft) => {
      const start = [row.lowLoadSlope * soft, 0.015, last * far, 0.03].map(Math.log);
      return levenbergMarquardt(
        {
          x: Array.from({ length: points.length + 2 }, (_, k) => k),
          y: [...points.map((p) => 100 * p.extension), 0, 0],
        },
        modelOf(points),
        {
          initialValues: start,
          minValues: [-9, -9, Math.log(last * 1.02), -9],
          maxValues: [1, 1, Math.log(last * 8), Math.log(MOST_PRE_STRETCH)],
          maxIterations: 400,
          damping: 0.1,
          gradientDifference: 1e-6,
          errorTolerance: 1e-9,
        },
      );
    }),
  );
  const best = fits.reduce((a, b) => (b.parameterError < a.parameterError ? b : a));
  const strip = unpack(best.parameterValues);
  const residuals = row.points.map((p) => 100 * (readExtension(strip, p.load) - p.extension));
  return { strip, residuals, worst: Math.max(...residuals.map(Math.abs)) };
};

export const nameOf = (row: MeasuredRow): string => `${row.yarn} ${row.stitch} ${row.direction}`;

export const fitAll = (): ReadonlyMap<string, FittedStrip> =>
  new Map(EXTENSION_ROWS.map((row) => [nameOf(row), fitStrip(row)]));
