import { countFor } from '../../garment/counts/index.ts';
import { bounds, type FitTarget } from '../../garment/index.ts';
import type { Make } from '../knit/luck.ts';
import { type PartName, partOf } from '../knit/pieces.ts';
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

const BODY: ReadonlySet<string> = new Set(['body-length', 'underarm-length']);
const TOP: ReadonlySet<string> = new Set(['armhole-depth', 'yoke-depth']);

/** So many mm longer at a landmark, as a factor of its measurement; nothing where it has none. */
const longer = (bench: Bench, landmark: string, byMm: number): [number, number][] => {
  const at = indexOf(bench, landmark);
  if (at < 0 || byMm === 0) return [];
  return [[at, Math.max(0.05, 1 + byMm / bench.luck.median.there[at]!)]];
};

/** A change below the underarm, which lengthens the whole, and one above it, as factors. */
const bodyLonger = (bench: Bench, under: number, top: number): Map<number, number> =>
  new Map([
    ...longer(bench, 'underarm-length', under),
    ...longer(bench, 'armhole-depth', top),
    ...longer(bench, 'yoke-depth', top),
    ...longer(bench, 'body-length', under + top),
  ]);

/** The lower edge moved by so many mm: the part gets that much longer below. */
export const edgeMoved = (bench: Bench, aim: Aim): Map<number, number> =>
  BODY.has(aim.fit.landmark)
    ? bodyLonger(bench, aim.byMm, 0)
    : new Map(longer(bench, aim.fit.landmark, aim.byMm));

/** Every length of a part that is likely to miss made to the middle of what is wanted, as it can be above the underarm. */
export const lengthsMet = (bench: Bench, part: PartName): Map<number, number> => {
  const aims = aimsOf(bench).filter((aim) => aim.part === part && aim.direction === 'length');
  const top = aims.find(({ fit }) => TOP.has(fit.landmark))?.byMm ?? 0;
  const body = aims.find(({ fit }) => BODY.has(fit.landmark));
  const whole = body?.fit.landmark === 'body-length' ? body.byMm - top : (body?.byMm ?? 0);
  const others = aims.filter(({ fit }) => !TOP.has(fit.landmark) && !BODY.has(fit.landmark));
  return new Map([
    ...bodyLonger(bench, whole, top),
    ...others.flatMap(({ fit, byMm }) => longer(bench, fit.landmark, byMm)),
  ]);
};

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
