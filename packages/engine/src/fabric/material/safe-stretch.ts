import { type Fibre, type Figure, figure, remembered, type Stitch } from '../../textile/index.ts';

/**
 * Stretches, as fractions of rest and in each direction, that makers of wool and test practice call
 * safe or tell sizes by. None of them is a limit of the fabric: a fabric can do far more, and comes back
 * from it at the next wash.
 */
export const SAFE_STRETCH: {
  /** "Do not stretch more than 5 % in each direction when steaming." Said of garments of wool. */
  readonly steaming: Figure;
  /** A change of about this much makes another garment size. */
  readonly oneSize: Figure;
} = {
  steaming: figure('wool-training-notes', 'read', 0.05),
  oneSize: figure('knit-goods-notes', 'read', 0.03),
};

/** Where a limit comes from: read in a publication, the practice of the trade without a source, or memory. */
export type SafeOrigin = 'published' | 'common-practice' | 'from-memory';

export interface SafeStretch {
  /** Fraction of the wet size at rest, in each direction. */
  readonly limit: number;
  readonly origin: SafeOrigin;
}

/**
 * How far a stitch pattern is pinned over its wet size. Common practice, no source: lace hard, 15 to
 * 30 % over; ribbing, cables and textured stitches barely or not at all, as pulling flattens them.
 */
const BY_PRACTICE: Readonly<Partial<Record<Stitch, number>>> = {
  lace: 0.3,
  'rib-1x1': 0.02,
  cables: 0.03,
  seed: 0.03,
};

/**
 * Strength of a wet fibre over its strength dry, where that is far below wool's: what is left of a limit
 * that is told of wool. From memory.
 */
const WET_STRENGTH: Readonly<Partial<Record<Fibre, Figure>>> = {
  viscose: remembered(0.5, 0.6),
  lyocell: remembered(0.8, 0.9),
  silk: remembered(0.75, 0.85),
};

/** What is called safe for a fabric: above it, a stretch is beyond that. */
export const safeStretchOf = ({
  stitch,
  fibres,
}: {
  readonly stitch: Stitch;
  readonly fibres: readonly { readonly fibre: Fibre; readonly share: number }[];
}): SafeStretch => {
  const practice = BY_PRACTICE[stitch];
  const plain = practice ?? SAFE_STRETCH.steaming.low;
  const weak = fibres.reduce(
    (sum, { fibre, share }) => sum + share * (1 - (WET_STRENGTH[fibre]?.low ?? 1)),
    0,
  );
  if (weak > 0) return { limit: plain * (1 - weak), origin: 'from-memory' };
  return { limit: plain, origin: practice === undefined ? 'published' : 'common-practice' };
};
