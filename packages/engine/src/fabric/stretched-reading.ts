import { meanOf, type Posterior } from '../stats/index.ts';
import { extensionAtLoad } from './extension.ts';
import { rowForBlend } from './extension-choice.ts';
import { type FabricModel, pitchIn } from './fabric-model.ts';
import type { FabricKind } from './growth-priors.ts';
import type { Direction, Specimen } from './specimen.ts';

/** Line load of a hand that spreads the stitches to count them, N/mm. Assumption. */
const HAND_LOAD = 0.04;

/**
 * A reading taken while pulling is the pitch times a stretch that nobody measured: nothing at all,
 * up to twice what a strip of such fabric gives under a light hand. Half of that is the mean and a
 * quarter the SD, so that the reading bounds the pitch from above with 97.7 % and weighs little.
 */
export const handPull = (
  kind: FabricKind,
  direction: Direction,
): { readonly mean: number; readonly sd: number } => {
  const row = rowForBlend(kind.stitch, kind.fibres, direction).row;
  const mean = Math.log1p(extensionAtLoad(row, HAND_LOAD));
  return { mean, sd: mean / 2 };
};

/** Stretched readings that the flat evidence contradicts: a pulled fabric cannot read narrower. */
export const stretchConflicts = (
  model: FabricModel,
  post: Posterior,
  specimens: readonly Specimen[],
): string[] =>
  specimens.flatMap((specimen) =>
    specimen.readings.flatMap((reading) => {
      if (reading.kind !== 'count' || reading.read !== 'stretched') return [];
      const flat = Math.exp(meanOf(post, pitchIn(model, reading.direction, reading.state)));
      if (reading.over / reading.count >= flat * 0.98) return [];
      return [
        `${specimen.name}: read while pulling, ${reading.count} over {mm:${reading.over}} is tighter than the fabric lies flat by everything else known. One of the two is misread.`,
      ];
    }),
  );
