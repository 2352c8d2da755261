import type { SizeAtNeedle } from '@dryflat/engine/routes';
import { sizeTitle } from '../result/size-title.ts';

/** `Size 3`, or `Stitches of 4, lengths of 3`. */
export const sizeName = ({ size, lengthsOf }: SizeAtNeedle): string =>
  size === lengthsOf ? sizeTitle(size) : `Stitches of ${size}, lengths of ${lengthsOf}`;

/** `4 mm`; a needle that is not known is the one in use. */
export const needleName = (mm: number | null): string =>
  mm === null ? 'Needle in use' : `${Math.round(100 * mm) / 100} mm`;

export interface SizeRow {
  readonly name: string;
  /** One for each needle; null where that size or blend is not there. */
  readonly chances: readonly (number | null)[];
}

export interface SizeTable {
  readonly needles: readonly (number | null)[];
  readonly rows: readonly SizeRow[];
}

const distinct = <T>(values: readonly T[]): T[] => [...new Set(values)];

/** Chance that all fits by size and needle, in the order in which they came; blends last. */
export const sizeTable = (sizes: readonly SizeAtNeedle[]): SizeTable => {
  const needles = distinct(sizes.map(({ needleMm }) => needleMm));
  const names = distinct([
    ...sizes.filter(({ size, lengthsOf }) => size === lengthsOf).map(sizeName),
    ...sizes.map(sizeName),
  ]);
  const chanceOf = (name: string, needle: number | null): number | null =>
    sizes.find((each) => each.needleMm === needle && sizeName(each) === name)?.chanceAllFit ?? null;
  return {
    needles,
    rows: names.map((name) => ({
      name,
      chances: needles.map((needle) => chanceOf(name, needle)),
    })),
  };
};

/** Landmarks that can be drawn, those that are wanted first. */
export const placesOf = (sizes: readonly SizeAtNeedle[]): string[] => {
  const all = sizes.flatMap(({ landmarks }) => landmarks);
  return distinct([
    ...all.filter(({ wantedMm }) => wantedMm !== null).map(({ landmark }) => landmark),
    ...all.map(({ landmark }) => landmark),
  ]);
};
