import { FORECAST_STATES, type ForecastState } from '@dryflat/engine/fabric';
import type { EachSize, Forecast, Notice, Range } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';
import { inUnits, type Units } from '../faults.ts';
import { cite } from '../print/cite.ts';

/** Hundredths of a millimetre: finer than any tape, coarse enough to read. */
const length = (value: number): number => Math.round(value * 100) / 100 + 0;
const orNull = (value: number | null): number | null => (value === null ? null : length(value));
/** Chances to a hundredth of a percent, the finest that 10,000 draws can tell. */
const chance = (value: number): number => Math.round(value * 10_000) / 10_000 + 0;

const range = ({ p05Mm, p50Mm, p95Mm }: Range) => ({
  p05Mm: length(p05Mm),
  p50Mm: length(p50Mm),
  p95Mm: length(p95Mm),
});

const byState = (states: Readonly<Record<ForecastState, Range>>) =>
  Object.fromEntries(FORECAST_STATES.map((state) => [state, range(states[state])]));

const measurements = (forecast: Forecast) =>
  forecast.measurements.map((row) => ({
    id: row.id,
    name: row.name,
    landmark: row.landmark,
    direction: row.direction,
    span: row.span,
    targetMm: orNull(row.targetMm),
    pinnedMm: orNull(row.pinnedMm),
    states: byState(row.states),
    standsOn: row.standsOn,
  }));

const fit = (forecast: Forecast) => ({
  state: forecast.judgedAt,
  chanceAll: forecast.chanceAllFit === null ? null : chance(forecast.chanceAllFit),
  landmarks: forecast.fit.map((each) => ({
    landmark: each.landmark,
    measurement: each.measurement,
    bodyMm: orNull(each.bodyMm),
    wanted: {
      kind: each.wantedMm.kind,
      minMm: length(each.wantedMm.min),
      maxMm: length(each.wantedMm.max),
    },
    easeMm: each.easeMm === null ? null : range(each.easeMm),
    finishedMm: range(each.finishedMm),
    chance: chance(each.chance),
    chanceByState: {
      dried: chance(each.chanceByState.dried),
      worn: chance(each.chanceByState.worn),
      rewashed: chance(each.chanceByState.rewashed),
    },
    tooSmall: chance(each.tooSmall),
    tooLarge: chance(each.tooLarge),
  })),
});

const sizes = (forecast: Forecast) =>
  forecast.sizes.map(({ size, chanceAll, landmarks }) => ({
    size,
    chanceAll: chance(chanceAll),
    landmarks: landmarks.map((each) => ({
      landmark: each.landmark,
      p50Mm: length(each.p50Mm),
      chance: chance(each.chance),
    })),
  }));

/** Notices of the engine, then those of the file, in the reader's unit. */
const noticesIn = (engine: readonly Notice[], file: readonly string[], unit: Units) => [
  ...engine.map(({ code, text }) => ({ code, text: inUnits(text, unit) })),
  ...file.map((text) => ({ code: 'file', text: inUnits(text, unit) })),
];

const evidence = (forecast: Forecast, unit: Units) =>
  forecast.evidence.map(({ id, kind, text, source }) => ({
    id,
    kind,
    text: inUnits(text, unit),
    source: source === null ? null : cite(source),
  }));

/**
 * A forecast as one JSON object, keys always in this order, lengths in millimetres to 0.01. Sentences
 * speak `unit`. `notices` are those of the file, after the engine's own.
 */
export const forecastJson = (
  record: GarmentRecord,
  forecast: Forecast,
  notices: readonly string[],
  unit: Units,
): string => {
  const answer = {
    name: record.name,
    size: forecast.chosenSize,
    seed: forecast.seed,
    draws: forecast.draws,
    measurements: measurements(forecast),
    fit: fit(forecast),
    gauge: { stitch: byState(forecast.gauge.stitch), row: byState(forecast.gauge.row) },
    sizes: sizes(forecast),
    advice: { ...forecast.advice, sentence: inUnits(forecast.advice.sentence, unit) },
    notices: noticesIn(forecast.notices, notices, unit),
    evidence: evidence(forecast, unit),
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
};

/** The same where no size is chosen: `size` is null, and each of `sizes` has its measurements and fit. */
export const eachSizeJson = (
  record: GarmentRecord,
  { sizes: each, best, notices: shared }: EachSize,
  notices: readonly string[],
  unit: Units,
): string => {
  const [first] = each;
  const answer = {
    name: record.name,
    size: null,
    seed: first?.seed,
    draws: first?.draws,
    sizes: each.map((forecast) => ({
      size: forecast.chosenSize,
      measurements: measurements(forecast),
      fit: fit(forecast),
    })),
    bestSize: best,
    notices: noticesIn(shared, notices, unit),
    evidence: first === undefined ? [] : evidence(first, unit),
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
};
