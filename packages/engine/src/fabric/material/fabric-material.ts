import type { Material } from '../../membrane/material.ts';
import type { Basis } from '../basis.ts';
import { hangBasis } from '../give.ts';
import type { FabricKind } from '../growth-priors.ts';
import type { Direction, Specimen } from '../specimen.ts';
import { SHARES, SHEAR_SHARE } from './coupling.ts';
import { departureOf, type MaterialStitch } from './departures.ts';
import { hangScale, hungReadings } from './hang-scale.ts';
import { JAM_LOG_SD, JAMS } from './jam.ts';
import { type PlaneConstants, sheetOf } from './plane.ts';
import { carryingLaw, reachingLaw } from './scale-law.ts';
import { type StripChoice, stripFor } from './strip-choice.ts';
import { wetLoadOf } from './wet.ts';

/** Wet as it lies on the mat, dry as it is worn. */
export type MaterialState = 'dry' | 'wet';

/** How unsure the constants are: SDs of logs, each as a factor on what its name says. */
export interface MaterialDoubt {
  /** On the strain under small loads, per direction. */
  readonly give: Readonly<Record<Direction, number>>;
  /** On the strain that no load reaches. */
  readonly limit: Readonly<Record<Direction, number>>;
  readonly coupling: number;
  readonly shear: number;
  readonly jam: number;
}

export interface FabricMaterial {
  /** Plain numbers, which can be sent to a worker; `sheetOf` makes laws of them. */
  readonly constants: PlaneConstants;
  /** For the membrane: along 1 the courses, along 2 the wales. */
  readonly sheet: Material;
  readonly doubt: MaterialDoubt;
  readonly bases: readonly Basis[];
}

export type MaterialQuestion = Omit<FabricKind, 'stitch'> & {
  readonly stitch: MaterialStitch;
  readonly specimens: readonly Specimen[];
};

/**
 * The fabric in the plane for a stitch pattern and a blend, rescaled by the knitter's own hung strips.
 * Loads in N per mm of width at rest, strains from lying flat and untouched. Total: every stitch and
 * blend has a material, wide where little is known.
 */
export const fabricMaterial = (
  question: MaterialQuestion,
  state: MaterialState,
): FabricMaterial => {
  const { stitch, fibres } = question;
  const choices = {
    width: stripFor(stitch, fibres, 'width'),
    length: stripFor(stitch, fibres, 'length'),
  };
  const water = wetLoadOf(fibres);
  const hung = hungReadings(question.specimens);
  const lawOf = (direction: Direction, wet: boolean) =>
    carryingLaw(choices[direction].law, wet ? water.factor : 1);
  const scale = hangScale({
    hung,
    giveLogSd: { width: choices.width.logSd, length: choices.length.logSd },
    limitLogSd: { width: choices.width.limitLogSd, length: choices.length.limitLogSd },
    lawOf,
    wetLogSd: water.logSd,
    wet: state === 'wet',
  });
  const departure = departureOf(stitch);
  const share = SHARES[departure.as];
  const law = (direction: Direction) => ({
    ...carryingLaw(
      reachingLaw(lawOf(direction, state === 'wet'), scale[direction].limit.factor),
      1 / scale[direction].give.factor,
    ),
    jam: JAMS[departure.as][direction],
  });
  const constants: PlaneConstants = {
    width: law('width'),
    length: law('length'),
    share: share.share,
    shearShare: SHEAR_SHARE.share,
  };
  return {
    constants,
    sheet: sheetOf(constants),
    doubt: {
      give: { width: scale.width.give.logSd, length: scale.length.give.logSd },
      limit: { width: scale.width.limit.logSd, length: scale.length.limit.logSd },
      coupling: Math.hypot(share.logSd, departure.couplingLogSd),
      shear: Math.hypot(SHEAR_SHARE.logSd, departure.logSd),
      jam: JAM_LOG_SD,
    },
    bases: [
      stripBasis(choices),
      couplingBasis(stitch),
      ...(state === 'wet' ? [wetBasis(fibres)] : []),
      ...hung.map(hangBasis),
    ],
  };
};

const stripBasis = ({ width, length }: Record<Direction, StripChoice>): Basis => ({
  id: 'material-stretch',
  kind: width.pulled ? 'published' : 'assumption',
  text: `How the fabric stretches, fitted to pulled strips: ${length.because}; give or take a factor of ${Math.exp(1.645 * Math.max(width.logSd, length.logSd)).toFixed(1)}`,
  source: width.pulled ? 'singal-2024-data' : null,
});

const couplingBasis = (stitch: MaterialStitch): Basis => {
  const departure = departureOf(stitch);
  const share = SHARES[departure.as];
  const published = departure.logSd === 0 && share.source !== null;
  return {
    id: 'material-coupling',
    kind: published ? 'published' : 'assumption',
    text: `How it draws in when it is pulled the other way: ${share.because}; how stitches come to touch, and its shear, are assumptions`,
    source: published ? share.source : null,
  };
};

const wetBasis = (fibres: FabricKind['fibres']): Basis => {
  const { factor, logSd, because } = wetLoadOf(fibres);
  return {
    id: 'material-wet',
    kind: 'assumption',
    text: `Wet, it is taken to pull ${factor.toFixed(2)} times as hard as dry at the same stretch (${(factor * Math.exp(-1.645 * logSd)).toFixed(2)} to ${(factor * Math.exp(1.645 * logSd)).toFixed(2)}): ${because}`,
    source: null,
  };
};
