import type { Stitch } from '@dryflat/engine/textile';
import type { CraftWord } from '../../kit/index.ts';

/** Names of stitch patterns: a word of the craft, or one that both Englishes share. */
const NAMES: Readonly<Record<Stitch, CraftWord | { readonly both: string }>> = {
  stockinette: 'stockinette',
  garter: { both: 'garter stitch' },
  'rib-1x1': { both: 'rib, 1 by 1' },
  seed: 'seed stitch',
  lace: { both: 'lace' },
  cables: { both: 'cables' },
  colourwork: { both: 'stranded knitting' },
  other: { both: 'another stitch' },
};

export const stitchName = (stitch: Stitch, word: (word: CraftWord) => string): string => {
  const name = NAMES[stitch];
  return typeof name === 'string' ? word(name) : name.both;
};
