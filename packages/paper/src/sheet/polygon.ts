import type { Place } from './sheet.ts';

/** Thousandths of a millimetre: finer than any printer. */
const at = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** Points joined by straight lines, as path data; an empty list gives `''`. */
export const openPath = (points: readonly Place[]): string =>
  points.map(({ x, y }, k) => `${k === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join('');

/** The same, closed. */
export const polygonPath = (points: readonly Place[]): string =>
  points.length === 0 ? '' : `${openPath(points)}Z`;
