import type { MatSpec, PinPlaced } from '@dryflat/engine/blocking';
import type { PinPlaces } from './use-mat.ts';

type Xy = readonly [number, number];

const CORNERS: Readonly<Record<string, (mat: MatSpec) => Xy>> = {
  'top left': () => [0, 0],
  'top right': ({ widthMm }) => [widthMm, 0],
  'bottom left': ({ heightMm }) => [0, heightMm],
  'bottom right': ({ widthMm, heightMm }) => [widthMm, heightMm],
};

/** Where a reference of the plan lies; null for one that is not known. `pinAt`: a pin's place by its number. */
export const referencePlace = (
  name: string,
  pinAt: (order: number) => Xy | null,
  mat: MatSpec,
): Xy | null => {
  const pin = /^pin (\d+)$/.exec(name);
  if (pin) return pinAt(Number(pin[1]));
  const corner = /^(top|bottom) (left|right) corner of the mat$/.exec(name);
  if (corner) return CORNERS[`${corner[1]} ${corner[2]}`]?.(mat) ?? null;
  const tile = /^tile crossing (\d+) from the left, (\d+) from the top$/.exec(name);
  return tile ? [Number(tile[1]) * mat.tileMm, Number(tile[2]) * mat.tileMm] : null;
};

/** Both tape distances of a pin as the pins stand now, mm. */
export const tapeNow = (
  { from }: PinPlaced,
  [x, y]: Xy,
  pins: readonly PinPlaced[],
  places: PinPlaces,
  mat: MatSpec,
): { readonly name: string; readonly mm: number }[] => {
  const pinAt = (order: number): Xy | null =>
    places[pins.findIndex((each) => each.order === order)] ?? null;
  return from.map(({ name, mm }) => {
    const at = referencePlace(name, pinAt, mat);
    return { name, mm: at === null ? mm : Math.hypot(at[0] - x, at[1] - y) };
  });
};
