import { betaDensity, type UnitDensity, unitMean, unitSd, withReading } from '../stats/index.ts';
import type { Fibre } from '../textile/index.ts';
import type { Basis } from './basis.ts';
import type { FabricKind } from './growth-priors.ts';
import type { Direction, SetReading, Specimen } from './specimen.ts';

/**
 * `kept`: the share of a pinned stretch that stays when the fabric is dry and the pins are out,
 * 0 (springs back wholly) to 1. dried = rest + kept·(pinned − rest). No published figure was found
 * for any fibre (room-temperature blocking of wool is a temporary set that water releases: Speakman
 * 1929), so every row is an assumption, wide, until the knitter's own strip says otherwise.
 */
const KEPT: Readonly<Record<Fibre | 'superwash', readonly [mean: number, sd: number]>> = {
  wool: [0.6, 0.2],
  superwash: [0.55, 0.22],
  alpaca: [0.55, 0.22],
  mohair: [0.6, 0.2],
  cashmere: [0.55, 0.22],
  silk: [0.5, 0.22],
  cotton: [0.4, 0.2],
  linen: [0.45, 0.22],
  hemp: [0.45, 0.22],
  viscose: [0.35, 0.2],
  lyocell: [0.35, 0.2],
  acrylic: [0.12, 0.1],
  nylon: [0.15, 0.12],
  polyester: [0.12, 0.1],
  other: [0.45, 0.25],
};

/** Reading each of the two stretched lengths by tape, in millimetres. Common practice, no source. */
const MARK_SD_MM = 1.5;
/** A strip and a garment do not keep quite the same share. Assumption. */
const STRIP_SD = 0.08;

/** How hard a swatch is pinned that nobody wrote down: a tenth, give or take nearly as much. Assumption. */
const UNTOLD_STRETCH = { mean: 0.1, sd: 0.08 };

/**
 * What pins left in a specimen that dried on them: mean and SD of the log of its length over its length
 * at rest. Told by its own marks where it has any in that direction, else by what stays of a usual stretch.
 */
export const gainedByPins = (
  kind: FabricKind,
  specimen: Specimen,
  direction: Direction,
): { readonly mean: number; readonly sd: number } => {
  const marks = specimen.readings.filter(
    (r): r is SetReading => r.kind === 'set' && r.direction === direction,
  );
  if (marks.length > 0) {
    const logs = marks.map(({ dried, rest }) => Math.log(dried / rest));
    const error = marks.reduce((sum, { rest }) => sum + (MARK_SD_MM * Math.SQRT2) / rest, 0);
    return {
      mean: logs.reduce((sum, x) => sum + x, 0) / marks.length,
      sd: error / marks.length ** 1.5,
    };
  }
  const [share, shareSd] = keptPrior(kind);
  const { mean, sd } = UNTOLD_STRETCH;
  return { mean: Math.log1p(share * mean), sd: Math.hypot(share * sd, shareSd * mean) };
};

/**
 * The same where nobody said whether it dried on pins: as likely as not (common practice, no source), and the
 * spread holds both.
 */
export const perhapsGained = ({ mean, sd }: ReturnType<typeof gainedByPins>) => ({
  mean: mean / 2,
  sd: Math.hypot(sd * Math.SQRT1_2, mean / 2),
});

export interface Kept {
  readonly density: UnitDensity;
  readonly bases: readonly Basis[];
}

/** Prior of the fibres times the knitter's own readings of pinned strips. */
export const keptShare = (kind: FabricKind, specimens: readonly Specimen[]): Kept => {
  const [mean, sd] = keptPrior(kind);
  const readings = specimens.flatMap((specimen) =>
    specimen.readings
      .filter((r): r is SetReading => r.kind === 'set' && r.pinned > r.rest)
      .map((reading) => ({ specimen, reading })),
  );
  const density = readings.reduce(
    (now, { reading }) => {
      const stretch = reading.pinned - reading.rest;
      const share = (reading.dried - reading.rest) / stretch;
      const error = Math.hypot((MARK_SD_MM * Math.SQRT2) / stretch, STRIP_SD);
      return withReading(now, share, error);
    },
    betaDensity(mean, sd),
  );
  return { density, bases: [keptBasis(density, readings.length), ...readings.map(setBasis)] };
};

const keptPrior = (kind: FabricKind): readonly [number, number] => {
  let mean = 0;
  let sd = 0;
  for (const { fibre, share } of kind.fibres) {
    const superwash = fibre === 'wool' && kind.treatment === 'superwash';
    const [m, s] = KEPT[superwash ? 'superwash' : fibre];
    mean += share * m;
    sd += share * s;
  }
  return [mean, sd];
};

const keptBasis = (density: UnitDensity, readings: number): Basis => ({
  id: 'kept-share',
  kind: 'assumption',
  text: `Of a pinned stretch ${(100 * unitMean(density)).toFixed(0)} % is taken to stay (give or take ${(164.5 * unitSd(density)).toFixed(0)} points): ${readings > 0 ? 'an assumption sharpened by your own strip' : 'no published figure was found; pin a strip to find out'}`,
  source: null,
});

const setBasis = ({ specimen, reading }: { specimen: Specimen; reading: SetReading }): Basis => ({
  id: `evidence:${specimen.id}:${reading.id}`,
  kind: 'measured',
  text: `${specimen.name}: {mm:${reading.rest}} at rest, pinned to {mm:${reading.pinned}}, dried to {mm:${reading.dried}}`,
  source: null,
});
