import type { Stitch } from '../../textile/index.ts';
import { STITCH_LEAN, type StitchLean } from '../extension-choice.ts';

/** Stitch patterns that a piece may be told apart by on the mat: some more than the record knows. */
export const MATERIAL_STITCHES = [
  'stockinette',
  'reverse-stockinette',
  'garter',
  'rib-1x1',
  'seed',
  'lace',
  'cables',
  'colourwork',
  'slipped',
  'other',
] as const satisfies readonly (Stitch | 'reverse-stockinette' | 'slipped')[];
export type MaterialStitch = (typeof MATERIAL_STITCHES)[number];

/** A pattern as a departure from one that was pulled: factors on how far it gives under a load. */
export interface Departure extends StitchLean {
  /** Further doubt about the coupling, as a log-SD. */
  readonly couplingLogSd: number;
}

const from = (lean: StitchLean): Departure => ({
  ...lean,
  // A pattern that was not pulled draws in by an unknown amount too, about as unknown as its give.
  couplingLogSd: lean.logSd,
});

const MORE: Readonly<Record<'reverse-stockinette' | 'slipped', StitchLean>> = {
  'reverse-stockinette': {
    as: 'stockinette',
    width: 1,
    length: 1,
    logSd: 0.1,
    because: 'reverse stockinette is stockinette seen from behind',
  },
  slipped: {
    as: 'stockinette',
    width: 0.7,
    length: 0.6,
    logSd: 0.5,
    because:
      'slipped stitches are taken as stockinette that gives less, as a slipped stitch spans its rows and the yarn runs straight behind it',
  },
};

export const departureOf = (stitch: MaterialStitch): Departure =>
  from(
    stitch === 'reverse-stockinette' || stitch === 'slipped' ? MORE[stitch] : STITCH_LEAN[stitch],
  );
