import { expect, test } from 'vitest';
import { FORECAST_STATES, type ForecastState } from '../../fabric/index.ts';
import { randomSource } from '../../stats/index.ts';
import { forecast } from '../forecast.ts';
import { drawKnitter, HABITS, type World } from './knitter.ts';
import { PULLOVER } from './questions.ts';

const KNITTERS = 2400;

/** Share of true lengths that lie in the stated 90 % range, by state. */
const coverage = (world: World, knitters: number, seed: number): Record<ForecastState, number> => {
  const random = randomSource(seed);
  const hits = { asKnit: 0, wet: 0, dried: 0, worn: 0, rewashed: 0 };
  let asked = 0;
  for (let k = 0; k < knitters; k++) {
    const { question, truth } = drawKnitter(PULLOVER, HABITS[k % HABITS.length]!, random, world);
    for (const m of forecast(question, { draws: 1000, seed: k }).measurements) {
      asked++;
      for (const state of FORECAST_STATES) {
        const { p05Mm, p95Mm } = m.states[state];
        const is = truth.get(m.id)![state];
        if (is >= p05Mm && is <= p95Mm) hits[state]++;
      }
    }
  }
  return Object.fromEntries(FORECAST_STATES.map((s) => [s, hits[s] / asked])) as Record<
    ForecastState,
    number
  >;
};

test('F1: 90 % ranges hold 88 to 92 % of 2,400 knitters drawn from the stated model', () => {
  // Standard error of one share at 2,400 knitters: √(0.9·0.1/2400) = 0.6 %, so ±2 % is over 3 of them.
  const shares = coverage({ drift: 1, growth: 1 }, KNITTERS, 11);
  for (const state of FORECAST_STATES) {
    expect(shares[state], state).toBeGreaterThan(0.88);
    expect(shares[state], state).toBeLessThan(0.92);
  }
}, 120_000);

test('F2: where swatches drift twice and yarn grows twice as far as stated, the ranges hold less', () => {
  // The loss when the truth is not the model: dried lengths are covered clearly less than stated.
  const shares = coverage({ drift: 2, growth: 2 }, 800, 12);
  expect(shares.dried).toBeLessThan(0.87);
  expect(shares.dried).toBeGreaterThan(0.6);
}, 60_000);
