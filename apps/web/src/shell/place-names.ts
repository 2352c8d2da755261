/** The places of one garment, in the order of its life. */
export const PLACE_NAMES = [
  'forecast',
  'wearer',
  'pattern',
  'yarn',
  'evidence',
  'routes',
  'counts',
  'pieces',
  'pace',
  'mat',
  'pinning',
  'dry',
  'after',
  'paper',
  'report',
] as const;

export type PlaceName = (typeof PLACE_NAMES)[number];

export const isPlaceName = (name: string): name is PlaceName =>
  (PLACE_NAMES as readonly string[]).includes(name);
