import { type EdgeKind as CordKind, edgeCord, type StretchLaw } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import type { TensionLaw } from '../membrane/index.ts';
import type { EdgeKind, FabricOnMat } from './types.ts';

/** Edges that hold the fabric beside them by a line of their own. */
const CORD_OF: Readonly<Record<EdgeKind, CordKind | null>> = {
  'cast-on': 'cast-on',
  'bound-off': 'bound-off',
  selvedge: 'selvedge',
  seam: 'seam',
  'picked-up': 'picked-up',
  rib: null,
  fold: null,
  open: null,
};

/** Between two laws by the direction of the edge: courses run along x, wales along y. */
const alongEdge = (a: StretchLaw, b: StretchLaw, share: number): StretchLaw => ({
  slope: a.slope * (1 - share) + b.slope * share,
  stiffening: a.stiffening * (1 - share) + b.stiffening * share,
  limit: a.limit * (1 - share) + b.limit * share,
});

/** Tension of an edge of the outline; null for one that does not limit the fabric. */
export const lawOfEdge = (
  kind: EdgeKind,
  from: Point,
  to: Point,
  fabric: FabricOnMat,
  layers: 1 | 2,
): TensionLaw | null => {
  const edge = CORD_OF[kind];
  if (edge === null) return null;
  const upright = Math.abs(to.y - from.y) / Math.hypot(to.x - from.x, to.y - from.y);
  const share = upright * upright;
  const { width, length } = fabric.constants;
  const { law } = edgeCord({
    edge,
    tightness: 'normal',
    beside: alongEdge(width, length, share),
    // A row stands above a bound-off edge, a stitch beside a seam.
    pitch: (fabric.pitch.row * (1 - share) + fabric.pitch.stitch * share) as never,
    ribbed: false,
  });
  return layers === 1 || kind === 'seam' ? law : twice(law);
};

/** Two edges lying on each other. */
const twice = (law: TensionLaw): TensionLaw => ({
  ...law,
  energy: (strain) => 2 * law.energy(strain),
  stress: (strain) => 2 * law.stress(strain),
  stiffness: (strain) => 2 * law.stiffness(strain),
});
