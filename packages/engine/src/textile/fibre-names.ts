/** Fibres that the tables know; anything else is `other` and gets the widest assumptions. */
export const FIBRES = [
  'wool',
  'alpaca',
  'mohair',
  'cashmere',
  'silk',
  'cotton',
  'linen',
  'hemp',
  'viscose',
  'lyocell',
  'acrylic',
  'nylon',
  'polyester',
  'other',
] as const;
export type Fibre = (typeof FIBRES)[number];

/** How the yarn was treated against felting, or finished. */
export const TREATMENTS = ['untreated', 'superwash', 'unknown'] as const;
export type Treatment = (typeof TREATMENTS)[number];

/** Stitch patterns that growth, hang and yarn use are told apart by. */
export const STITCHES = [
  'stockinette',
  'garter',
  'rib-1x1',
  'seed',
  'lace',
  'cables',
  'colourwork',
  'other',
] as const;
export type Stitch = (typeof STITCHES)[number];

/** Yarn weight classes of the standard yarn weight system, by their number. */
export const WEIGHT_CLASSES = [0, 1, 2, 3, 4, 5, 6, 7] as const;
export type WeightClass = (typeof WEIGHT_CLASSES)[number];
