import { type Cited, type Figure, figure } from '../../textile/index.ts';
import type { PulledStitch } from '../extension-data.ts';
import { STRIPS } from '../stretch/strips.ts';
import { startNarrowing } from './loop-table.ts';

/** What one pattern takes for a coupling, as a share of √(Y₁Y₂). */
export type Share = Cited & {
  readonly share: number;
  readonly logSd: number;
  readonly because: string;
};

/**
 * A stitch keeps its yarn, so what it gains in width it loses in height. The loop simulation says how
 * much at rest, ν; a strip free to narrow has c = ν Y₂, and with Y₂/Y₁ of the same acrylic fabric
 * ρ = c/√(Y₁Y₂) = ν √(Y₂/Y₁).
 */
const stockinetteShare = (): number =>
  startNarrowing() *
  Math.sqrt(
    STRIPS['acrylic stockinette length']!.slope / STRIPS['acrylic stockinette width']!.slope,
  );

/**
 * Plane stiffness of acrylic garter in the finite-element file of the same data set, N/mm; that it is
 * garter is inferred from its limits. Along courses, along wales, between them, and in shear.
 */
const PUBLISHED_PLANE: Readonly<Record<'courses' | 'wales' | 'between' | 'shear', Figure>> = {
  courses: figure('singal-2024-data', 'data', 0.240872),
  wales: figure('singal-2024-data', 'data', 0.0599528),
  between: figure('singal-2024-data', 'data', 0.0362245),
  shear: figure('singal-2024-data', 'data', 0.01),
};

const publishedShare = (of: 'between' | 'shear'): number =>
  PUBLISHED_PLANE[of].low / Math.sqrt(PUBLISHED_PLANE.courses.low * PUBLISHED_PLANE.wales.low);

const cited = { source: 'singal-2024-data', standing: 'data' } as const;
const assumed = { source: null, standing: 'assumption' } as const;

const STOCKINETTE: Share = {
  ...cited,
  share: stockinetteShare(),
  logSd: 0.3,
  because: 'width against height of a simulated plain stitch, which keeps its yarn',
};

const GARTER: Share = {
  ...cited,
  share: publishedShare('between'),
  logSd: 0.3,
  because: 'published plane stiffness of an acrylic garter strip',
};

/** Rib and seed: half way between the two that are known, and as wide as these lie apart. */
const BETWEEN: Share = {
  ...assumed,
  share: (STOCKINETTE.share + GARTER.share) / 2,
  logSd: 0.4,
  because: 'half way between stockinette and garter; nobody measured this stitch',
};

export const SHARES: Readonly<Record<PulledStitch, Share>> = {
  stockinette: STOCKINETTE,
  garter: GARTER,
  'rib-1x1': BETWEEN,
  seed: BETWEEN,
};

/** Shear stiffness as a share: one published number for garter, taken for every stitch, widely. */
export const SHEAR_SHARE: Share = {
  ...assumed,
  share: publishedShare('shear'),
  logSd: 0.7,
  because: 'published for an acrylic garter strip, taken for any stitch',
};
