import { type Affine, add, constant, type Unknowns } from '../stats/index.ts';
import type { Basis } from './basis.ts';
import { type Evidence, type FabricModel, type FabricQuestion, pitchIn } from './fabric-model.ts';
import { gainedByPins, perhapsGained } from './kept.ts';
import { countSd, extentSd, PLACE_SD } from './reading-error.ts';
import type { CountReading, Direction, ExtentReading, RestState, Specimen } from './specimen.ts';
import { handPull } from './stretched-reading.ts';

/** How far the pitch of a specimen lies from the garment's. Common practice, no source. */
export const DRIFT_SD: Readonly<Record<Specimen['kind'], number>> = {
  swatch: 0.03,
  part: 0.012,
  piece: 0.01,
  'past-garment': 0.03,
};
/** Worked flat for a garment in the round, or the other way: tension differs. Assumption. */
const OTHER_WAY_SD = 0.04;
/** Another stitch pattern than the garment's says little of its pitch. Assumption. */
const OTHER_STITCH_SD = 0.15;
/** How far a specimen's growth lies from the garment's, by how it was washed. Assumption. */
export const GROWTH_SD: Readonly<Record<Specimen['washed'], number>> = {
  'as-garment': 0.012,
  otherwise: 0.035,
  not: 0.035,
};
export const DRIFT_CORRELATION = 0.5;
/** An extent of unknown count tells only of changes: log count may be that of 10 or of 1,000. */
const UNKNOWN_COUNT = { mean: Math.log(100), sd: 2 };

type Pitched = CountReading | ExtentReading;

/** Observations of one specimen's readings of pitch. Hang and set readings are used elsewhere. */
export const specimenObservations = (
  model: FabricModel,
  question: FabricQuestion,
  specimen: Specimen,
): Evidence[] => {
  const readings = specimen.readings.filter(
    (r): r is Pitched => r.kind === 'count' || r.kind === 'extent',
  );
  if (readings.length === 0) return [];
  const parts = specimenParts(model.unknowns, question, specimen);
  return readings.map((reading) => observe(model, question, specimen, reading, parts));
};

interface SpecimenParts {
  drift(direction: Direction): Affine;
  growth(direction: Direction, state: RestState): Affine;
  place(reading: Pitched): Affine;
  /** What pins that nobody spoke of may have left, less its middle: in all of its readings, or in none. */
  pins(direction: Direction, sd: number): Affine;
  level(direction: Direction): Affine;
}

/** The unknowns of one specimen, each made once and shared by the readings that it touches. */
const specimenParts = (
  unknowns: Unknowns,
  question: FabricQuestion,
  specimen: Specimen,
): SpecimenParts => {
  const sd = driftSd(question, specimen);
  const [width, length] = unknowns.freshPair([0, 0], [sd, sd], DRIFT_CORRELATION);
  const drifts = { width, length };
  const once = new Map<string, Affine>();
  const fresh = (key: string, spread: number): Affine => {
    const made = once.get(key) ?? unknowns.fresh(0, spread);
    once.set(key, made);
    return made;
  };
  return {
    drift: (direction) => drifts[direction],
    growth: (direction, state) =>
      state === 'asKnit'
        ? { constant: 0, terms: [] }
        : add(
            fresh(`growth ${direction}`, GROWTH_SD[specimen.washed]),
            ...(state === 'dried' ? [] : [fresh(`growth ${direction} ${state}`, 0.008)]),
          ),
    place: (reading) =>
      fresh(
        `place ${reading.direction} ${reading.place ?? reading.id} ${reading.kind}`,
        placeSd(reading),
      ),
    pins: (direction, spread) => fresh(`pins ${direction}`, spread),
    level: (direction) =>
      add(constant(UNKNOWN_COUNT.mean), fresh(`level ${direction}`, UNKNOWN_COUNT.sd)),
  };
};

const driftSd = (question: FabricQuestion, specimen: Specimen): number =>
  Math.hypot(
    DRIFT_SD[specimen.kind],
    specimen.workedAsGarment ? 0 : OTHER_WAY_SD,
    specimen.stitch === question.stitch ? 0 : OTHER_STITCH_SD,
  );

/** A whole extent averages over places; a count sits in one. */
const placeSd = (reading: Pitched): number => (reading.kind === 'count' ? PLACE_SD : PLACE_SD / 3);

const NONE = { mean: 0, sd: 0 };

const observe = (
  model: FabricModel,
  question: FabricQuestion,
  specimen: Specimen,
  reading: Pitched,
  parts: SpecimenParts,
): Evidence => {
  const at = reading.direction;
  const pitch = add(
    pitchIn(model, at, reading.state),
    parts.drift(at),
    parts.growth(at, reading.state),
    parts.place(reading),
  );
  const error = reading.kind === 'count' ? countSd(reading, specimen) : extentSd(reading);
  const pull = reading.read === 'stretched' ? handPull(question, at) : NONE;
  const onPins = reading.pinned ? gainedByPins(question, specimen, at) : NONE;
  const perhaps = reading.pinned === 'perhaps';
  const gained = perhaps ? perhapsGained(onPins) : onPins;
  return {
    form: add(
      pitch,
      ...(reading.kind === 'extent' && reading.count === null ? [parts.level(at)] : []),
      ...(perhaps ? [parts.pins(at, gained.sd)] : []),
    ),
    value: logReading(reading) - pull.mean - gained.mean,
    sd: Math.hypot(error, pull.sd, perhaps ? 0 : gained.sd),
    basis: readingBasis(specimen, reading),
  };
};

const logReading = (reading: Pitched): number =>
  reading.kind === 'count'
    ? Math.log(reading.over / reading.count)
    : Math.log(reading.extent / (reading.count ?? 1));

/** A state at rest as a reading is told of. */
export const REST_WORDS: Readonly<Record<RestState, string>> = {
  asKnit: 'as knit',
  wet: 'wet',
  dried: 'washed and dried',
  rewashed: 'after later washes',
};

const pinsWords = ({ pinned }: Pitched): string =>
  pinned === 'perhaps'
    ? ', on pins or flat: nobody said, so weak'
    : pinned
      ? ' on pins, less what they gained'
      : '';

const readingBasis = (specimen: Specimen, reading: Pitched): Basis => {
  const what = reading.direction === 'width' ? 'stitches' : 'rows';
  const amount =
    reading.kind === 'count'
      ? `${reading.count} ${what} over {mm:${reading.over}}`
      : reading.count === null
        ? `{mm:${reading.extent}} in ${reading.direction}`
        : `${reading.count} ${what} measuring {mm:${reading.extent}}`;
  const pulled = reading.read === 'stretched' ? ', read while pulling: an upper bound, weak' : '';
  return {
    id: `evidence:${specimen.id}:${reading.id}`,
    kind: 'measured',
    text: `${specimen.name}: ${amount}, ${REST_WORDS[reading.state]}${pinsWords(reading)}${pulled}`,
    source: null,
  };
};
