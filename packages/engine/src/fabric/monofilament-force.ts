import type { Cited } from '../textile/index.ts';
import { narrowingRatio, type RestStitch } from './yarn-conservation.ts';

/**
 * Force of a knit monofilament drawn along its wales, from bending energy 1/w + β/c per stitch with
 * w + δ · c constant (Poincloux et al. 2018; the sign is re-derived from their energy):
 * F(ε) = Ỹ · N · ν · [(1 − ν ε)⁻² − (1 + ε)⁻²], ν = δ · c / w, N stitches across.
 * A check of the geometry; knitting yarn is softer and rubs more.
 */
export const BENDING_MODULUS: Cited & { readonly loading: number; readonly unloading: number } = {
  loading: 0.038,
  unloading: 0.008,
  source: 'poincloux-2018',
  standing: 'read-second-hand',
};

/** Weight of the bending in height against that in width: β = δ · (c / w)². */
export const bendingRatio = ({ stitch, row, delta }: RestStitch): number =>
  delta * (row / stitch) ** 2;

/**
 * Newtons for a strain along the wales, 0 at rest, rising without bound towards the strain 1/ν;
 * at or beyond it throws a RangeError. `modulus` in newton per stitch, as `BENDING_MODULUS`.
 */
export const drawForce = (
  rest: RestStitch,
  stitchesAcross: number,
  strain: number,
  modulus: number,
): number => {
  const ratio = narrowingRatio(rest);
  if (!(strain > -1 && ratio * strain < 1)) throw new RangeError(`no such strain: ${strain}`);
  return modulus * stitchesAcross * ratio * ((1 - ratio * strain) ** -2 - (1 + strain) ** -2);
};
