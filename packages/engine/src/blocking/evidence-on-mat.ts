import { tapeSd } from '../fabric/index.ts';
import { type Affine, add, type Observation, type Unknowns } from '../stats/index.ts';
import type { Foretold } from './forward-on-mat.ts';
import { HAND_PULL, logPull, NO_PULL_SD } from './hand-pull.ts';
import type { MatReading } from './mat-types.ts';
import type { Ruler } from './measure.ts';

/**
 * What the model leaves out of a dimension, alike each time it is read: SD as a share of its length.
 * Assumption: a sheet without curl or bias on a mat of even friction.
 */
const LEFT_OUT = 0.005;
/** What a coarse mesh is off by beside a fine one while few pins are in, mm: 1 to 3 on a sweater back. */
const MESH_SD = 2;

/** One thing that was read, with the way to foretell it. */
export interface Evidence {
  readonly reading: number;
  readonly what: 'length' | 'at-limit' | 'slack';
  /** Index of the ruler; -1 for a pull. */
  readonly ruler: number;
  readonly value: number;
  readonly sd: number;
  readonly of: (foretold: Foretold) => number;
}

const lengthsOf = (
  { measured }: MatReading,
  reading: number,
  rulers: readonly Ruler[],
): Evidence[] =>
  measured.map(({ landmark, mm }) => {
    const ruler = rulers.findIndex((each) => each.dimension.landmark === landmark);
    return {
      reading,
      what: 'length',
      ruler,
      value: mm,
      sd: Math.hypot(MESH_SD, mm * tapeSd(mm)),
      of: ({ lengths }) => lengths[ruler]!,
    };
  });

const feltOf = ({ felt }: MatReading, reading: number): Evidence[] => {
  const common = { reading, ruler: -1 };
  if (felt === 'at-limit')
    return [
      {
        ...common,
        what: felt,
        value: logPull(HAND_PULL.n),
        sd: HAND_PULL.logSd,
        of: ({ pull }) => logPull(pull),
      },
    ];
  if (felt === 'slack')
    return [{ ...common, what: felt, value: 0, sd: NO_PULL_SD, of: ({ pull }) => pull }];
  return [];
};

/** Everything that the readings say, in their order. A pull that felt right says nothing: hands differ. */
export const evidenceOf = (readings: readonly MatReading[], rulers: readonly Ruler[]): Evidence[] =>
  readings.flatMap((each, k) => [...lengthsOf(each, k, rulers), ...feltOf(each, k)]);

/** SD of what the model leaves out of a dimension, mm; 0 of a pull. */
export const leftOutSd = (ruler: Ruler | undefined): number =>
  ruler === undefined ? 0 : LEFT_OUT * ruler.dimension.targetMm;

/** What the model leaves out of each dimension, as unknowns. */
export const leftOut = (rulers: readonly Ruler[], unknowns: Unknowns): Map<number, Affine> =>
  new Map(rulers.map((ruler, k) => [k, unknowns.fresh(0, leftOutSd(ruler))] as const));

/** The evidence as linear about where it was foretold: `slopes` per standard normal, at `about`. */
export const observed = (
  { ruler, value, sd }: Evidence,
  foretold: number,
  slopes: readonly number[],
  about: readonly number[],
  extra: ReadonlyMap<number, Affine>,
): Observation => {
  const form: Affine = {
    constant: foretold - slopes.reduce((sum, slope, k) => sum + slope * about[k]!, 0),
    terms: slopes.map((slope, k) => [k, slope] as const),
  };
  const other = extra.get(ruler);
  return { form: other === undefined ? form : add(form, other), value, sd };
};
