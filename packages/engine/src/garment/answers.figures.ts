import * as fc from 'fast-check';
import { garmentTapeSd, type Reading, type Specimen } from '../fabric/index.ts';
import { mm } from '../units/index.ts';
import { specimens, tapes } from './check/arbitrary.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { Forecast, ForecastQuestion } from './forecast-types.ts';

const SEED = 20_261_130;
const FEW = { draws: 200 };
const CLOSED = ['asKnit', 'wet', 'dried', 'rewashed'] as const;

/** How far the farthest measured number is from what is shown of its state, in spreads of a tape. */
const farthest = (question: ForecastQuestion): number => {
  const made = forecast(question, FEW);
  return question.measured.reduce((most, { measurement, state, value }) => {
    const alike = question.measured.filter(
      (other) => other.measurement === measurement && other.state === state,
    );
    const shown = made.measurements.find(({ id }) => id === measurement);
    const rest = CLOSED.find((each) => each === state);
    // Of several readings of one state none is the number: their middle is.
    if (shown === undefined || rest === undefined || alike.length > 1) return most;
    const flat = shown.states[rest].p50Mm / (shown.span === 'around' ? 2 : 1);
    return Math.max(most, Math.abs(Math.log(flat / value)) / garmentTapeSd(value));
  }, 0);
};

const swatch = (name: string, stitches: number): Specimen => {
  const reading = (place: string): Reading => ({
    kind: 'count',
    id: `${name} ${place}`,
    direction: 'width',
    count: stitches,
    over: mm(100),
    state: 'dried',
    read: 'flat',
    place,
  });
  return {
    id: name,
    name,
    kind: 'swatch',
    stitch: 'stockinette',
    workedAsGarment: true,
    washed: 'as-garment',
    width: mm(160),
    height: mm(160),
    readings: [reading('left'), reading('right')],
  };
};

/** The least difference of two swatches, in percent, from which on both are named. */
const namedFrom = (): number => {
  const named = (percent: number): boolean =>
    forecast(
      {
        ...PULLOVER,
        specimens: [
          swatch('One', 20),
          swatch('Two', Number((20 * (1 + percent / 100)).toFixed(2))),
        ],
      },
      FEW,
    ).notices.some(({ code }) => code === 'specimens-disagree');
  let percent = 30;
  while (percent > 0 && named(percent)) percent -= 0.5;
  return percent + 0.5;
};

const breadths = (made: Forecast): number[] =>
  [made.gauge.stitch, made.gauge.row].flatMap((gauge) =>
    CLOSED.map((state) => Math.log(gauge[state].p95Mm / gauge[state].p05Mm)),
  );

/** Readings that change no gauge by a hundredth of its range, and of which nothing is said. */
const silent = (given: readonly Specimen[]): number => {
  const question = { ...PULLOVER, specimens: given };
  const made = forecast(question, FEW);
  const told = new Set(made.notices.map(({ about }) => about));
  const all = breadths(made);
  return given.flatMap((specimen) =>
    specimen.readings.filter((reading) => {
      if (told.has(`evidence:${specimen.id}:${reading.id}`)) return false;
      const without = given.map((each) =>
        each === specimen
          ? { ...each, readings: each.readings.filter((other) => other !== reading) }
          : each,
      );
      const wider = breadths(forecast({ ...question, specimens: without }, FEW));
      return wider.every((breadth, k) => breadth <= all[k]! * 1.001);
    }),
  ).length;
};

export async function* figures(full: boolean) {
  const numRuns = full ? 2_000 : 200;
  const far = fc
    .sample(tapes, { numRuns, seed: SEED })
    .map((measured) => farthest({ ...PULLOVER, measured }));
  yield {
    name: `farthest that a measured number is from what is shown of its state, of ${numRuns} garments`,
    value: Math.max(...far),
    unit: 'spreads of a tape',
    goal: { most: 2 },
  };
  yield {
    name: 'difference of two washed swatches from which on they are named',
    value: namedFrom(),
    unit: '%',
    goal: { most: 12 },
  };
  const given = fc.sample(specimens, { numRuns: numRuns / 10, seed: SEED });
  yield {
    name: `readings that change nothing and are not named, of those of ${given.length} garments`,
    value: given.reduce((sum, each) => sum + silent(each), 0),
    unit: '',
    goal: { exactly: 0 },
  };
}
