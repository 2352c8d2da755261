import { countFor } from '../../garment/counts/index.ts';
import { bounds, type FitTarget, type PartName, partOf } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import type { RouteFit } from '../types.ts';
import type { Bench } from './draft.ts';

/** A landmark that is likely to miss, and how much larger it is to be made. */
export interface Aim {
  readonly target: FitTarget;
  readonly fit: RouteFit;
  readonly part: PartName;
  readonly direction: 'width' | 'length';
  readonly way: 'larger' | 'smaller';
  /** Times as long as it is planned, so that its median comes to the middle of the wanted range. */
  readonly factor: number;
  /** By how much that is longer or wider as knit, mm around or along; negative is less. */
  readonly byMm: number;
}

/** A landmark with at least this chance is left alone. */
const WELL = 0.9;

/** Landmarks of the planned garment that are likely to miss, the worst first. */
export const aimsOf = (bench: Bench): Aim[] =>
  bench.own.targets
    .flatMap((target, k): Aim[] => {
      const fit = bench.plannedFit.fit[k]!;
      if (fit.chance >= WELL) return [];
      const { low, high } = bounds(target);
      const factor = (low + high) / 2 / fit.finishedMm.p50Mm;
      if (!(factor > 0)) return [];
      const { landmark, direction } = target.measurement.wanted;
      const part = partOf(landmark);
      const knit = bench.luck.median.there[target.at]!;
      const way = factor > 1 ? 'larger' : 'smaller';
      return [{ target, fit, part, direction, way, factor, byMm: knit * (factor - 1) }];
    })
    .sort((a, b) => a.fit.chance - b.fit.chance);

export const firstAim = (
  bench: Bench,
  direction: Aim['direction'],
  part: PartName,
): Aim | undefined => aimsOf(bench).find((aim) => aim.direction === direction && aim.part === part);

/** Index of the measurement at a landmark; −1 where there is none. */
export const indexOf = ({ luck }: Bench, landmark: string): number =>
  luck.known.model.measurements.findIndex(({ wanted }) => wanted.landmark === landmark);

export const withFactors = (
  makes: readonly Make[],
  factors: ReadonlyMap<number, number>,
  change: (make: Make, factor: number) => Make,
): Make[] =>
  makes.map((make, at) => {
    const factor = factors.get(at);
    return factor === undefined ? make : change(make, factor);
  });

/** The count of stitches nearest to a width as knit, on the pattern's repeat, even where the repeat allows it. */
export const stitchesFor = (bench: Bench, widthMm: number): number | null => {
  const asked = { wantedMm: widthMm, pitchMm: bench.luck.pitch.width.median };
  const { repeat } = bench.question;
  const even = countFor({ ...asked, repeat: repeat ?? undefined, parity: 'even' });
  if (even.ok) return even.value.count;
  const any = countFor({ ...asked, repeat: repeat ?? undefined });
  return any.ok ? any.value.count : null;
};
