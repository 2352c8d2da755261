import { expect, test } from 'vitest';
import { chanceError, draws } from '../../../../scripts/lib/draws.mjs';
import { type RandomSource, randomSource } from '../stats/index.ts';
import { celsius, grams } from '../units/index.ts';
import { SCALE_SD, THICKNESS_SD, TOLERANCE } from './assumptions.ts';
import { drawDryings, weighingSd } from './draw-dryings.ts';
import { dryAfter, massAfter } from './garment-course.ts';
import { type Imagined, imaginer, UNKNOWNS } from './imagined.ts';
import { toClock, toModel } from './pace.ts';
import type { DryingQuestion, Spread, Weighing } from './types.ts';
import { weightedSpread } from './weighted-spread.ts';

const pick = <T>(source: RandomSource, from: readonly T[]): T =>
  from[Math.floor(source.uniform() * from.length)]!;

/** A drying of the kinds that happen: fibre, air, lying and water all vary. */
const someQuestion = (source: RandomSource): DryingQuestion => ({
  fibres: [{ fibre: pick(source, ['wool', 'cotton', 'alpaca', 'linen'] as const), share: 1 }],
  dry: { mass: grams(150 + 600 * source.uniform()), air: 'here' },
  wet: 'towel',
  air: {
    temperature: celsius(15 + 10 * source.uniform()),
    humidityPercent: 35 + 35 * source.uniform(),
    movement: pick(source, ['still', 'moving'] as const),
  },
  lying: {
    on: pick(source, ['mat', 'rack'] as const),
    fabricM2: null,
    layers: pick(source, [1, 2] as const),
    thick: null,
    pinned: false,
  },
  weighings: [],
});

interface Life {
  readonly question: DryingQuestion;
  readonly truth: Imagined;
  /** Hours by the model, until it is dry. */
  readonly model: number;
}

/** How a truth departs from the stated model. */
interface Departure {
  readonly unknowns?: (z: Float64Array) => void;
  /** From this hour on the air takes up this share of the water, whether it was weighed or not. */
  readonly turn?: { readonly hour: number; readonly share: number };
}

const live = (source: RandomSource, { unknowns }: Departure): Life => {
  const towel = someQuestion(source);
  const z = Float64Array.from(UNKNOWNS, () => source.normal());
  unknowns?.(z);
  const truth = imaginer(towel)(z);
  const wet = grams(massAfter(truth, 0) + SCALE_SD * source.normal());
  return { question: { ...towel, wet }, truth, model: dryAfter(truth, TOLERANCE) };
};

/** Weighed at these shares of what is expected before; then the air changes its pace. */
const weigh = (
  { question, truth, model }: Life,
  shares: readonly number[],
  { turn }: Departure,
  source: RandomSource,
) => {
  const expected = dryAfter(imaginer(question)(new Float64Array(UNKNOWNS.length)), TOLERANCE);
  const own = { steadyHours: (shares.at(-1) ?? 0) * expected, pace: truth.pace };
  const air = turn ? { steadyHours: turn.hour, pace: 1 / turn.share } : { steadyHours: 0, pace: 1 };
  const weighings = shares.map((share): Weighing => {
    const hours = share * expected;
    const mass = massAfter(truth, toModel(air, hours));
    const sd = weighingSd(massAfter(truth, 0) - mass, SCALE_SD);
    return { hours, mass: grams(mass + sd * source.normal()) };
  });
  return { weighings, hours: toClock(air, toClock(own, model)) };
};

/** So few that the points of a range move by a few hundredths of it; the app takes 2,000. */
const DRAWS = 400;

const spreadOf = (question: DryingQuestion, seed: number): Spread => {
  const { dry, learnt } = drawDryings(question, { seed, draws: DRAWS });
  return weightedSpread(dry, learnt.weights);
};

const tally = (lives: number, shares: readonly number[], departure: Departure = {}) => {
  const source = randomSource(2024);
  let [inside, width] = [0, 0];
  for (let i = 0; i < lives; i++) {
    const life = live(source, departure);
    const { weighings, hours } = weigh(life, shares, departure, source);
    const { p5, p95 } = spreadOf({ ...life.question, weighings }, i);
    if (p5 <= hours && hours <= p95) inside++;
    width += Math.log(p95 / Math.max(p5, 1e-9)) / lives;
  }
  return { covered: inside / lives, width };
};

const LIVES = draws(400, 2000);
/** Thousands of dryings beside other tests on two cores, ms. */
const SLOW = 240_000;
const EARLY = [0.15, 0.35, 0.7];

test.each([
  { name: 'no weighing', at: [] },
  { name: 'three weighings', at: EARLY },
])(
  'D11: with $name 90 % ranges hold in 9 of 10 dryings of the stated model',
  ({ at }) => {
    const { covered } = tally(LIVES, at);
    // Of 2,000 dryings 88 to 92 %, of 400 dryings 85.5 to 94.5 %.
    expect(Math.abs(covered - 0.9)).toBeLessThan(chanceError(0.9, LIVES));
  },
  SLOW,
);

test('D12: each weighing narrows the range on average', () => {
  const widths = [0, 1, 2, 3].map((n) => tally(draws(100, 1000), EARLY.slice(0, n)).width);
  for (let i = 1; i < widths.length; i++) expect(widths[i]!).toBeLessThan(widths[i - 1]!);
  // The first tells the rate, which is most of the doubt: it takes away at least a third.
  expect(widths[1]! / widths[0]!).toBeLessThan(0.67);
});

const DEPARTED = draws(120, 2000);
const losing = (departure: Departure) => ({
  before: tally(DEPARTED, [], departure).covered,
  after: tally(DEPARTED, EARLY, departure).covered,
});
/** Bounds of a share that 2,000 such dryings gave. */
const about = (share: number) => ({
  least: share - chanceError(share, DEPARTED),
  most: share + chanceError(share, DEPARTED),
});
const shifted = (name: (typeof UNKNOWNS)[number], by: number) => (z: Float64Array) => {
  z[UNKNOWNS.indexOf(name)]! += by;
};

test(
  'D13: a truth that dries at half the stated rate breaks the range; weighings mend most of it',
  () => {
    const { before, after } = losing({ unknowns: shifted('heat', -2.5) });
    expect(before).toBeLessThan(about(0.36).most);
    expect(after).toBeGreaterThan(about(0.91).least);
  },
  SLOW,
);

test(
  'D13: thick places half as thick again as usual cost coverage that weighings cannot give back',
  () => {
    // A scale sees the whole: it makes the rest surer, and so the range narrower about a wrong end.
    const thicker = Math.log(1.5) / THICKNESS_SD.usual;
    const { before, after } = losing({ unknowns: shifted('thickness', thicker) });
    expect(before).toBeLessThan(about(0.78).most);
    expect(after).toBeLessThan(about(0.68).most);
    expect(after).toBeGreaterThan(about(0.68).least);
  },
  SLOW,
);

test(
  'D13: air that takes up half from the sixth hour on costs about a fifth of the coverage',
  () => {
    const { before, after } = losing({ turn: { hour: 6, share: 0.5 } });
    for (const [covered, share] of [
      [before, 0.79],
      [after, 0.77],
    ] as const) {
      expect(covered).toBeLessThan(about(share).most);
      expect(covered).toBeGreaterThan(about(share).least);
    }
  },
  SLOW,
);
