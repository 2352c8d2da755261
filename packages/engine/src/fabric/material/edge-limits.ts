import { type Figure, remembered } from '../../textile/index.ts';
import { LOOP_CONSTANTS } from '../loop-geometry.ts';
import { LOOSENESS } from './jam.ts';

export const EDGE_KINDS = ['bound-off', 'cast-on', 'seam', 'picked-up', 'selvedge'] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

export const TIGHTNESSES = ['tight', 'normal', 'stretchy'] as const;
export type Tightness = (typeof TIGHTNESSES)[number];

/** 1×1 rib at rest over plain fabric of as many stitches, in width. From memory of a textbook. */
export const RIB_WIDTH: Figure = remembered(0.5);

/** Yarn in a bound-off stitch over the width of a stitch: three is the rule of the trade. */
export const CHAIN_YARN: Readonly<Record<Tightness, Figure>> = {
  tight: remembered(2.75),
  normal: remembered(3),
  stretchy: remembered(4),
};

/** Width of a stitch in diameters of its yarn. */
const STITCH_DIAMETERS = (LOOSENESS.low + LOOSENESS.high) / 2 / LOOP_CONSTANTS.wetRelaxed.kw;

/**
 * Limit of a chain, as a fraction of the width of its stitches: pulled straight, a link is two legs
 * and half a turn about the next one, π diameters. With three widths of yarn a link ends at 1.21.
 */
export const chainLimit = (yarn: number): number =>
  (yarn * STITCH_DIAMETERS - Math.PI) / (2 * STITCH_DIAMETERS) - 1;

const chain: Readonly<Record<Tightness, number>> = {
  tight: chainLimit(CHAIN_YARN.tight.low),
  normal: chainLimit(CHAIN_YARN.normal.low),
  stretchy: chainLimit(CHAIN_YARN.stretchy.low),
};

export interface EdgeFacts {
  /** Strain along the edge that no pull reaches, beside plain fabric. All assumptions. */
  readonly limits: Readonly<Record<Tightness, number>>;
  /** Rows or stitches of the fabric beside it that are as stiff at rest. Assumption. */
  readonly band: number;
  readonly because: string;
}

export const EDGES: Readonly<Record<EdgeKind, EdgeFacts>> = {
  'bound-off': {
    limits: chain,
    band: 3,
    because:
      'a bound-off edge is a chain of about three widths of yarn per stitch, and ends when its links are straight',
  },
  'cast-on': {
    limits: chain,
    band: 3,
    because: 'a cast-on edge is taken as a chain like a bound-off one',
  },
  seam: {
    limits: { tight: 0.03, normal: 0.12, stretchy: 0.3 },
    band: 4,
    because:
      'sewing yarn runs almost straight and gives what slack it was left, through two layers of edge stitches',
  },
  'picked-up': {
    limits: { tight: 0.12, normal: 0.25, stretchy: 0.45 },
    band: 3,
    because:
      'stitches picked up hold the edge at as many points, with the loops of two fabrics between them',
  },
  selvedge: {
    limits: { tight: 0.15, normal: 0.3, stretchy: 0.5 },
    band: 2,
    because: 'a selvedge turns each row on one stitch that is drawn firm',
  },
};
