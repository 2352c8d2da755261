import fc from 'fast-check';
import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import {
  normalColumns,
  quantilesInPlace,
  randomSource,
  spreadOfLogNormal,
} from '../../stats/index.ts';
import { KEPT_SD, LONG_RUN_SD, MINUTE_SD, PART_SD, PLAIN_PACE, SITTING_SD } from './assumptions.ts';
import { drawPace } from './draw-pace.ts';
import { handOf, hoursOf, paceOf } from './hand.ts';
import { partHours } from './steps.ts';
import type { PaceEntry, PaceQuestion } from './types.ts';
import { agendaOf } from './week.ts';

const entry = fc.record({
  minutes: fc.integer({ min: 5, max: 300 }),
  perMinute: fc.double({ min: 5, max: 60, noNaN: true }),
  fabric: fc.constantFrom<'plain' | 'worked'>('plain', 'worked'),
});
const log = fc.array(entry, { maxLength: 8 }).map((entries): PaceEntry[] =>
  entries.map(({ minutes, perMinute, fabric }) => ({
    minutes,
    stitches: minutes * perMinute,
    fabric,
  })),
);

test('PC2: before any timing, 90 % of plain paces are 15 to 40 stitches a minute, and worked ones about half', () => {
  const { logSd, median } = PLAIN_PACE;
  expect(spreadOfLogNormal(PLAIN_PACE).p5).toBeCloseTo(15, 9);
  expect(spreadOfLogNormal(PLAIN_PACE).p95).toBeCloseTo(40, 9);
  const plain = paceOf(handOf([]), 'plain');
  expect(plain.median).toBeCloseTo(median, 9);
  expect(plain.logSd).toBeCloseTo(Math.hypot(logSd, LONG_RUN_SD), 9);
  expect(paceOf(handOf([]), 'worked').median / plain.median).toBeCloseTo(0.5, 9);
});

test('PC2: one sitting is the closed posterior of a normal mean', () => {
  const sitting: PaceEntry = { minutes: 1e5, stitches: 3e6, fabric: 'plain' };
  // So many minutes that rounding them to one is nothing: 1 / √12 / 1e5 against 0.15.
  const [prior, noise] = [PLAIN_PACE.logSd ** -2, SITTING_SD ** -2];
  const pace = paceOf(handOf([sitting]), 'plain');
  const mean = (prior * Math.log(PLAIN_PACE.median) + noise * Math.log(30)) / (prior + noise);
  expect(Math.log(pace.median)).toBeCloseTo(mean, 8);
  expect(pace.logSd).toBeCloseTo(Math.sqrt(1 / (prior + noise) + LONG_RUN_SD ** 2), 8);
});

test('PC3: one more sitting never widens the pace, of either kind, and the long run stays', () => {
  fc.assert(
    fc.property(log, entry, (entries, { minutes, fabric }) => {
      const more = handOf([...entries, { minutes, stitches: 25 * minutes, fabric }]);
      for (const kind of ['plain', 'worked', 'ripped'] as const) {
        const [before, after] = [paceOf(handOf(entries), kind), paceOf(more, kind)];
        // Rounding of a factorisation of four unknowns.
        expect(after.logSd).toBeLessThanOrEqual(before.logSd + 1e-12);
        expect(after.logSd).toBeGreaterThan(LONG_RUN_SD);
      }
      expect(paceOf(more, fabric).logSd).toBeLessThan(paceOf(handOf(entries), fabric).logSd);
    }),
  );
});

test('PC3: sittings in another order are the same pace', () => {
  fc.assert(
    fc.property(log, (entries) => {
      const [there, back] = [handOf(entries), handOf([...entries].reverse())];
      expect(paceOf(there, 'worked').median).toBeCloseTo(paceOf(back, 'worked').median, 9);
    }),
  );
});

test('PC4: doubling stitches and pace changes no hour', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.double({ min: 0, max: 5 }),
      (stitches, pace) => {
        const care = Float64Array.of(-1, 0, 1.5);
        const at = (log: number) => new Float64Array(3).fill(log);
        const once = partHours(stitches, at(pace), care);
        const twice = partHours(2 * stitches, at(pace + Math.LN2), care);
        // A relative rounding of two exponentials.
        once.forEach((each, i) => {
          expect(Math.abs(twice[i]! / each - 1)).toBeLessThan(1e-12);
        });
      },
    ),
  );
});

const DRAWS = 40_000;
const ONE_PART: PaceQuestion = {
  parts: [{ name: 'back', stitches: 30_000, fabric: 'plain' }],
  log: [{ minutes: 60, stitches: 1500, fabric: 'plain' }],
  hours: [1, 1, 2, 1, 1, 4, 3],
  from: '2031-04-09',
  away: ['2031-04-12'],
  finishing: null,
  dryingHours: null,
  yarn: null,
  by: null,
};

test('PC5: with one part the hours are its log-normal, and the days that of a normal integral', () => {
  const drawn = drawPace(ONE_PART, normalColumns(3, DRAWS));
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.faults));
  const exact = hoursOf(handOf(ONE_PART.log), 'plain', 30_000);
  const { p5, p50, p95 } = spreadOfLogNormal(exact);
  const sampled = quantilesInPlace(drawn.value.hours.slice(), [0.05, 0.5, 0.95]);
  [p5, p50, p95].forEach((point, k) => {
    // Four standard errors of a 5 % point: 4 · 2.11 · sd / √n in logs.
    const tolerance = (4 * 2.2 * exact.logSd) / Math.sqrt(DRAWS);
    expect(Math.abs(Math.log(sampled[k]! / point))).toBeLessThan(tolerance);
  });
  const { until } = agendaOf(ONE_PART);
  for (const day of [3, 8, 10, 14, 20]) {
    const z = Math.log(until[day + 1]! / exact.median) / Math.hypot(exact.logSd, KEPT_SD);
    const chance = jStat.normal.cdf(z, 0, 1);
    const share = drawn.value.chanceBy(
      new Date(Date.UTC(2031, 3, 9 + day)).toISOString().slice(0, 10),
    );
    // Four standard errors of a share, at most 4 · 0.5 / √n.
    expect(Math.abs(share - chance)).toBeLessThan(2 / Math.sqrt(DRAWS));
  }
  expect(exact.logSd).toBeGreaterThan(PART_SD);
});

test('PC17: ranges of 90 % of hours hold in 88 to 92 % of 4,000 hands of the stated model', () => {
  const source = randomSource(11);
  const HANDS = 4000;
  let inside = 0;
  for (let k = 0; k < HANDS; k++) {
    const timed = Math.log(PLAIN_PACE.median) + PLAIN_PACE.logSd * source.normal();
    const sittings = [20, 60, 45].slice(0, k % 4);
    const entries = sittings.map((minutes): PaceEntry => {
      const noise = Math.hypot(SITTING_SD, MINUTE_SD / minutes) * source.normal();
      return { minutes, stitches: minutes * Math.exp(timed + noise), fabric: 'plain' };
    });
    const truth = timed + LONG_RUN_SD * source.normal() + PART_SD * source.normal();
    const hours = 20_000 / 60 / Math.exp(truth);
    const { p5, p95 } = spreadOfLogNormal(hoursOf(handOf(entries), 'plain', 20_000));
    if (p5 <= hours && hours <= p95) inside++;
  }
  // A standard error of a share of 4,000 at 90 % is 0.47 points: 2 points are four of them.
  expect(inside / HANDS).toBeGreaterThan(0.88);
  expect(inside / HANDS).toBeLessThan(0.92);
});
