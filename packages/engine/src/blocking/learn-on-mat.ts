import type { MaterialDoubt } from '../fabric/index.ts';
import { fail, ok } from '../units/index.ts';
import {
  type Asked,
  askedOf,
  factorsAt,
  fitted,
  type Linear,
  NONE,
  type Round,
  SETTLED,
  WHAT,
} from './fit-on-mat.ts';
import { matModel, stoppedOnMat } from './forward-on-mat.ts';
import { goingsOn } from './goings-on.ts';
import { learnedNotices } from './learned-notices.ts';
import { learnedChange } from './learned-words.ts';
import { inMatFaults, readingFaults } from './mat-faults.ts';
import type { Learned, LearnedWhat, LearnOnMat, ReadAgain } from './mat-types.ts';
import { otherPiece } from './other-piece.ts';
import type { FabricOnMat, MeanSd, PieceToBlock } from './types.ts';

/** SDs of the logs of the factors, as WHAT has them. */
const sdsOf = ({ fabric: { doubt }, restLogSd }: PieceToBlock): number[] => [
  Math.hypot(doubt.give.width, doubt.give.length) / Math.SQRT2,
  restLogSd.width,
  restLogSd.length,
  doubt.coupling,
];

const scaledDoubt = (doubt: MaterialDoubt, give: number, coupling: number): MaterialDoubt => ({
  ...doubt,
  give: { width: doubt.give.width * give, length: doubt.give.length * give },
  coupling: doubt.coupling * coupling,
});

const withDoubt = (fabric: FabricOnMat, { sds }: Round): FabricOnMat => ({
  ...fabric,
  doubt: scaledDoubt(fabric.doubt, sds[0]!, sds[3]!),
});

/** The piece at the middle of what is now thought, with the doubt that is left. */
const learnedPiece = (piece: PieceToBlock, round: Round, sds: readonly number[]): PieceToBlock => {
  const other = otherPiece(piece, factorsAt(round.z, sds));
  return {
    ...other,
    zones: other.zones.map((zone) =>
      zone.fabric === undefined ? zone : { ...zone, fabric: withDoubt(zone.fabric, round) },
    ),
    fabric: withDoubt(other.fabric, round),
    restLogSd: {
      width: piece.restLogSd.width * round.sds[1]!,
      length: piece.restLogSd.length * round.sds[2]!,
    },
  };
};

const changesOf = (z: readonly number[], shrunk: readonly number[], sds: readonly number[]) =>
  WHAT.map((what: LearnedWhat, k) => {
    const before: MeanSd = { mean: 0, sd: sds[k]! };
    return learnedChange(what, before, { mean: z[k]! * sds[k]!, sd: shrunk[k]! * sds[k]! });
  });

const readAgain = (
  { evidence, model: { rulers } }: Asked,
  { values }: Linear,
  now: readonly number[],
): ReadAgain[] =>
  evidence.flatMap(({ reading, ruler, value }, i) =>
    ruler < 0
      ? []
      : [
          {
            reading,
            landmark: rulers[ruler]!.dimension.landmark,
            measuredMm: value,
            foretoldMm: values[i]!,
            nowMm: now[i]!,
          },
        ],
  );

const nothingLearned = (piece: PieceToBlock): Learned => ({
  piece,
  changes: changesOf(
    NONE,
    NONE.map(() => 1),
    sdsOf(piece),
  ),
  readAgain: [],
  notices: [],
  fit: { iterations: 0, residual: 0, converged: true, evaluations: 0 },
});

/**
 * What hand and tape tell of the fabric while its pins go in. Stiffness, size at rest and draw-in are
 * log-normal, with the doubt of the piece; lengths and pulls are foretold by laying the piece with what
 * was in at the time, and all readings are taken together (Gauss–Newton on a linear normal model, a
 * compass search where that meets a kink), so their order does not matter; where neither settles, a
 * notice says so. Fabric that is held by its pins tells its size and its draw-in; only a
 * pull at its limit tells stiffness, by what hands are taken to put on a pin. The doubt that is left is
 * kept for each unknown by itself. A reading far beyond all doubt is not taken, and named. Faults name a
 * dimension the piece has not, a length or a count that is none, or that a hook stopped it.
 */
export const learnOnMat: LearnOnMat = (piece, inMat, readings, hooks = {}) => {
  const faults = inMatFaults(piece, inMat);
  if (faults.length === 0) faults.push(...readingFaults(piece, inMat, readings));
  if (faults.length > 0) return fail(...faults);
  const telling = readings.some(({ felt, measured }) => felt !== 'right' || measured.length > 0);
  if (!telling) return ok(nothingLearned(piece));
  const going = goingsOn(
    hooks.onStep === undefined ? {} : { onStep: hooks.onStep },
    piece.name,
    0,
    1,
  );
  const made = matModel(piece, inMat, going.goOn);
  if (!made.ok) return made;
  const sds = sdsOf(piece);
  const asked = askedOf(made.value, readings, sds);
  const fit = fitted(asked);
  if (fit === null) return stoppedOnMat();
  const { first, now, iterations, residual } = fit;
  const changes = changesOf(fit.z, fit.sds, sds);
  const settled = residual <= SETTLED;
  return ok({
    piece: learnedPiece(piece, fit, sds),
    changes,
    readAgain: readAgain(asked, first, now),
    notices: learnedNotices(asked.evidence, made.value.rulers, {
      ...first,
      taken: fit.taken,
      changes,
      settled,
    }),
    fit: {
      iterations,
      residual,
      converged: settled,
      evaluations: made.value.effort.spent,
    },
  });
};
