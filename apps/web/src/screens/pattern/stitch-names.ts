import type { Stitch } from '@dryflat/engine/textile';

/** One word for both, or [American, British]. */
const NAMES: Readonly<Record<Stitch, string | readonly [string, string]>> = {
  stockinette: ['Stockinette', 'Stocking stitch'],
  garter: ['Garter stitch', 'Garter stitch'],
  'rib-1x1': 'Rib, 1 × 1',
  seed: ['Seed stitch', 'Moss stitch'],
  lace: 'Lace',
  cables: 'Cables',
  colourwork: ['Stranded colorwork', 'Stranded colourwork'],
  other: 'Something else',
};

export const stitchName = (stitch: Stitch, words: 'us' | 'uk'): string => {
  const name = NAMES[stitch];
  return typeof name === 'string' ? name : name[words === 'us' ? 0 : 1];
};
