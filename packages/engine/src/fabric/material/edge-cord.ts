import type { TensionLaw } from '../../membrane/law.ts';
import type { Millimetres } from '../../units/index.ts';
import type { Basis } from '../basis.ts';
import { energyAt, loadAt, type StretchLaw, stiffnessAt } from '../stretch/law.ts';
import { EDGES, type EdgeKind, RIB_WIDTH, type Tightness } from './edge-limits.ts';

export interface EdgeQuestion {
  readonly edge: EdgeKind;
  readonly tightness: Tightness;
  /** Law of the fabric beside it, along the edge. */
  readonly beside: StretchLaw;
  /** Across the edge: height of a row at a bound-off edge, width of a stitch at a seam. */
  readonly pitch: Millimetres;
  /** True where the edge runs across ribbing, which at rest is narrower than its own edge. */
  readonly ribbed: boolean;
}

/** An edge as a line of its own: force in N over strain along it, counted from the fabric's rest. */
export interface EdgeCord {
  readonly law: TensionLaw;
  /** Limit of the edge over that of the fabric beside it; below 1 the edge holds the fabric back. */
  readonly limitOverFabric: number;
  /** SD of the log of the limit. */
  readonly logSd: number;
  readonly basis: Basis;
}

/** How unsure a limit is: hands differ more than kinds do. Assumption. */
const EDGE_LOG_SD = 0.35;

/**
 * Cord of an edge: as stiff at rest as so many rows or stitches of the fabric beside it, ending at its
 * own limit, and slack when the edge is shorter than at rest.
 */
export const edgeCord = ({ edge, tightness, beside, pitch, ribbed }: EdgeQuestion): EdgeCord => {
  if (!(pitch > 0)) throw new RangeError(`pitch ${pitch} mm`);
  const { limits, band, because } = EDGES[edge];
  const limit = (1 + limits[tightness]) / (ribbed ? RIB_WIDTH.low : 1) - 1;
  const cord: StretchLaw = {
    slope: beside.slope * band * pitch,
    stiffening: beside.stiffening * band * pitch,
    limit,
  };
  return {
    law: slackLaw(cord),
    limitOverFabric: limit / beside.limit,
    logSd: EDGE_LOG_SD,
    basis: {
      id: `edge-${edge}`,
      kind: 'assumption',
      text: `The ${edge} edge (${tightness}) is taken to stretch by up to ${(100 * limit).toFixed(0)} %, where the fabric beside it could by ${(100 * beside.limit).toFixed(0)} %: ${because}`,
      source: null,
    },
  };
};

/** A line that carries nothing when it is slack. */
const slackLaw = (law: StretchLaw): TensionLaw => ({
  energy: (strain) => (strain < 0 ? 0 : energyAt(law, strain)),
  stress: (strain) => (strain < 0 ? 0 : loadAt(law, strain)),
  stiffness: (strain) => (strain < 0 ? 0 : stiffnessAt(law, strain)),
  limit: law.limit,
});
