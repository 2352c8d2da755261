import type { Direction, ForecastState } from '../../fabric/index.ts';
import {
  type Draws,
  type ForecastQuestion,
  type InSize,
  inSizes,
  type Known,
  lengthsIn,
  logIn,
  type OnNeedle,
  type Passage,
  passagesOf,
  type Range,
  rangeOf,
  type SizeOf,
  scaledBy,
} from '../../garment/index.ts';
import {
  type Affine,
  type LogNormal,
  meanOf,
  type NormalColumns,
  sdOf,
  spreadOfLogNormal,
} from '../../stats/index.ts';

/** How one measurement comes about: of the piece that is there or of one begun afresh, and how it dries. */
export interface Make {
  readonly from: 'there' | 'afresh';
  /** Times as long as in the size that is knit. */
  readonly factor: number;
  /** Length that it is pinned to; null where it dries without pins. */
  readonly pinnedTo: number | null;
  /** Largest stretch of the wet rest length that the pins are trusted with. */
  readonly limit: number;
  /** Strain while worn. */
  readonly hang: number;
}

type Rest = 'asKnit' | 'wet' | 'dried' | 'rewashed';

/** What one set of imagined garments is made of. */
export interface Cloth {
  readonly known: Known;
  readonly draws: Draws;
  readonly normals: NormalColumns;
  /** Median length as knit of each measurement, mm: of what is there, and begun afresh. */
  readonly median: Readonly<Record<Make['from'], readonly number[]>>;
  /** Length at rest without pins, closed form: log-normal. */
  rest(at: number, from: Make['from'], state: Rest): LogNormal;
  /** Width of a stitch and height of a row as knit, mm. */
  readonly pitch: Readonly<Record<Direction, LogNormal>>;
}

/**
 * One set of imagined garments on which routes are compared. Index i of every column is the same
 * garment, knitter and body.
 */
export interface Luck extends Cloth {
  /** Passages as if everything was pinned to the pattern or the plan; `pinnedTo` null where nothing says to what. */
  readonly pinned: readonly Passage[];
  /** Measurements of another size begun afresh, handled as planned; null where the size lacks one. */
  sized(size: SizeOf): (InSize | null)[];
  /** Lengths with factor 1 of a make; multiply by its factor. Not to be changed. */
  lengths(at: number, make: Make, state: ForecastState): Float64Array;
  range(at: number, make: Make, state: ForecastState): Range;
}

/** States that pins have no part in. */
const UNPINNED: ReadonlySet<ForecastState> = new Set(['asKnit', 'wet', 'rewashed']);

/** A garment twice as large, pinned to twice the size, is twice as large in every draw: one column serves all factors. */
const keyOf = (
  at: number,
  { from, factor, pinnedTo, limit, hang }: Make,
  state: ForecastState,
): string => {
  const hung = state === 'worn' ? ` ${hang}` : '';
  return pinnedTo === null || UNPINNED.has(state)
    ? `${at} ${from} ${state}${hung}`
    : `${at} ${from} ${state}${hung} ${(pinnedTo / factor).toPrecision(12)} ${limit}`;
};

const scaled = (range: Range, by: number): Range => ({
  p05Mm: range.p05Mm * by,
  p50Mm: range.p50Mm * by,
  p95Mm: range.p95Mm * by,
});

const closed = (length: LogNormal): Range => {
  const { p5, p50, p95 } = spreadOfLogNormal(length);
  return { p05Mm: p5, p50Mm: p50, p95Mm: p95 };
};

const kept = <T>(table: Map<string, T>, key: string, make: () => T): T => {
  const had = table.get(key);
  if (had !== undefined) return had;
  const made = make();
  table.set(key, made);
  return made;
};

/** Columns are made when first asked for, and kept. */
export const luckOf = (question: ForecastQuestion, cloth: Cloth): Luck => {
  const { known, draws } = cloth;
  const { chosen } = question;
  const columns = new Map<string, Float64Array>();
  const ranges = new Map<string, Range>();
  const passageOf = (at: number, { pinnedTo, factor, limit, hang }: Make): Passage =>
    scaledBy({ ...known.passages[at]!, pinnedTo, pinLimit: limit, hang }, 1 / factor);
  const lengths: Luck['lengths'] = (at, make, state) =>
    kept(columns, keyOf(at, make, state), () => {
      const logs = make.from === 'there' ? draws.asKnit[at]! : draws.afresh[at]!;
      return lengthsIn(draws, logs, passageOf(at, make), state);
    });
  /** The state at rest that it is in; null where pins or hanging change it. */
  const restOf = (at: number, make: Make, state: ForecastState): Rest | null => {
    if (state === 'worn') return make.hang === 0 ? restOf(at, make, 'dried') : null;
    return state === 'dried' && make.pinnedTo !== null ? null : state;
  };
  const range = (at: number, make: Make, state: ForecastState): Range => {
    const rest = restOf(at, make, state);
    return rest === null
      ? rangeOf(lengths(at, make, state).slice())
      : closed(cloth.rest(at, make.from, rest));
  };
  return {
    ...cloth,
    pinned: passagesOf({ ...question, drying: 'pin' }, known.model)(known.restMm, {
      width: chosen,
      length: chosen,
    }).passages,
    sized: inSizes(question, known),
    lengths,
    range: (at, make, state) =>
      scaled(
        kept(ranges, keyOf(at, make, state), () => range(at, make, state)),
        make.factor,
      ),
  };
};

/** The garment and its fabric as the evidence has them. */
export const clothOf = (known: Known, draws: Draws, normals: NormalColumns): Cloth => {
  const { model, post } = known;
  const logNormalOf = (form: Affine): LogNormal => ({
    median: Math.exp(meanOf(post, form)),
    logSd: sdOf(post, form),
  });
  const { measurements, fabric } = model;
  const formOf = (at: number, from: Make['from']): Affine => {
    const { asKnit, afresh } = measurements[at]!;
    return from === 'there' ? asKnit : afresh;
  };
  const medians = (from: Make['from']): number[] =>
    measurements.map((_, at) => Math.exp(meanOf(post, formOf(at, from))));
  return {
    known,
    draws,
    normals,
    median: { there: medians('there'), afresh: medians('afresh') },
    rest: (at, from, state) =>
      logNormalOf(logIn(fabric, formOf(at, from), measurements[at]!, state)),
    pitch: { width: logNormalOf(fabric.asKnit.width), length: logNormalOf(fabric.asKnit.length) },
  };
};

/**
 * The same begun afresh on another needle by the gauge model: all counted lengths move with the pitch, half of
 * it as doubt. Nothing of the old garment is left.
 */
export const onOtherNeedle = (cloth: Cloth, { draws, shift }: OnNeedle): Cloth => {
  const doubt = Math.abs(shift) / 2;
  const counted = cloth.known.model.measurements.map(({ wanted }) => wanted.worked === 'counted');
  const moved = ({ median, logSd }: LogNormal): LogNormal => ({
    median: median * Math.exp(shift),
    logSd: Math.hypot(logSd, doubt),
  });
  const medians = cloth.median.afresh.map((mm, at) => (counted[at] ? mm * Math.exp(shift) : mm));
  return {
    ...cloth,
    draws,
    median: { there: medians, afresh: medians },
    rest: (at, _, state) => {
      const length = cloth.rest(at, 'afresh', state);
      return counted[at] ? moved(length) : length;
    },
    pitch: { width: moved(cloth.pitch.width), length: moved(cloth.pitch.length) },
  };
};
