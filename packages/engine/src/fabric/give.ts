import { type Affine, meanOf, posterior, sdOf, Unknowns } from '../stats/index.ts';
import type { Basis } from './basis.ts';
import { contractionAtExtension, extensionAtLoad, meanExtensionTo } from './extension.ts';
import { rowForBlend } from './extension-choice.ts';
import type { FabricKind } from './growth-priors.ts';
import { GRAVITY } from './hang.ts';
import type { Direction, HangReading, Specimen } from './specimen.ts';

/** How far this fabric gives in one direction under a line load. */
export interface FabricGive {
  /** Strain (fraction of rest) under a line load of N per mm of width. */
  strainAt(load: number): number;
  /** Mean strain where the load rises evenly from `low` to `high` N/mm, as in a hanging tube. */
  meanStrain(low: number, high: number): number;
  /** Strain of the other direction, negative, that goes with this strain. */
  narrowing(strain: number): number;
  /** SD of the log of every strain: how unlike the data row this fabric may be. */
  readonly logSd: number;
  readonly bases: readonly Basis[];
}

/** A weight hung from a strip acts at other loads than a garment does. Assumption. */
export const OTHER_LOAD_SD = 0.2;
/** Cloth under steady load goes on creeping for hours, a short pull does not show it. Assumption. */
const CREEP = { factor: 1.25, logSd: 0.2 };
/** Reading a hung length, in millimetres, at each of the two readings. Common practice, no source. */
export const MARK_SD_MM = 1.5;

/**
 * The load-extension row for this stitch and blend, rescaled by the knitter's own hang readings: in
 * the log of the scale a normal prior meets normal readings.
 */
export const fabricGive = (
  kind: FabricKind & { readonly specimens: readonly Specimen[] },
  direction: Direction,
): FabricGive => {
  const choice = rowForBlend(kind.stitch, kind.fibres, direction);
  const hung = kind.specimens.flatMap((specimen) =>
    specimen.readings
      .filter(
        (r): r is HangReading =>
          r.kind === 'hang' && r.direction === direction && r.after > r.before,
      )
      .map((reading) => ({ specimen, reading })),
  );
  const unknowns = new Unknowns();
  const logScale = unknowns.fresh(0, choice.logSd);
  const post = posterior(
    unknowns.count,
    hung.map(({ reading }) => scaleObservation(logScale, reading, choice.row)),
  );
  const factor = CREEP.factor * Math.exp(meanOf(post, logScale));
  const strainAt = (load: number): number => factor * extensionAtLoad(choice.row, load);
  return {
    strainAt,
    meanStrain: (low, high) => factor * meanBetween(choice.row, low, high),
    narrowing: (strain) => contractionAtExtension(choice.row, strain),
    logSd: Math.hypot(sdOf(post, logScale), CREEP.logSd),
    bases: [
      {
        id: 'hang',
        kind: choice.kind,
        text: `How far the fabric hangs, from load and extension of knitted strips: ${choice.because}; long hanging is taken to add a quarter (assumption)`,
        source: choice.cited.source,
      },
      ...hung.map(hangBasis),
    ],
  };
};

type Row = Parameters<typeof extensionAtLoad>[0];

/** Line load of a mass over a width, N/mm. */
export const lineLoad = (grams: number, widthMm: number): number =>
  ((grams / 1000) * GRAVITY.low) / widthMm;

const scaleObservation = (logScale: Affine, reading: HangReading, row: Row) => {
  const seen = reading.after / reading.before - 1;
  const expected = extensionAtLoad(row, lineLoad(reading.mass, reading.clipped));
  const error = (MARK_SD_MM * Math.SQRT2) / (reading.after - reading.before);
  return { form: logScale, value: Math.log(seen / expected), sd: Math.hypot(error, OTHER_LOAD_SD) };
};

const meanBetween = (row: Row, low: number, high: number): number =>
  high <= low
    ? extensionAtLoad(row, low)
    : (high * meanExtensionTo(row, high) - low * meanExtensionTo(row, low)) / (high - low);

export const hangBasis = ({
  specimen,
  reading,
}: {
  specimen: Specimen;
  reading: HangReading;
}): Basis => ({
  id: `evidence:${specimen.id}:${reading.id}`,
  kind: 'measured',
  text: `${specimen.name}: ${reading.mass} g hung from {mm:${reading.clipped}} took {mm:${reading.before}} to {mm:${reading.after}}`,
  source: null,
});

/** A stretch of a hanging tube: its own mass, the mass below it, and the girth that carries both. */
export interface TubeLoad {
  readonly hung: number;
  readonly below: number;
  readonly girthMm: number;
}

/** Mean strain along a stretch of a hanging tube, and of its width. */
export const hangingTube = (
  give: FabricGive,
  tube: TubeLoad,
): { readonly longer: number; readonly narrower: number } => {
  const low = lineLoad(tube.below, tube.girthMm);
  const longer = give.meanStrain(low, low + lineLoad(tube.hung, tube.girthMm));
  return { longer, narrower: give.narrowing(longer) };
};
