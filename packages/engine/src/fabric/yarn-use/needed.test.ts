import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalColumns, quantilesInPlace, spreadOfLogNormal } from '../../stats/index.ts';
import { TAIL_MM } from './assumptions.ts';
import { PULLOVER, SWATCHED, WORSTED } from './check/questions.ts';
import { yarnDraws } from './draws.ts';
import { yarnNeeded } from './needed.ts';
import type { YarnNeed, YarnQuestion, YarnWork } from './types.ts';

const needed = (work: YarnWork, question: YarnQuestion = SWATCHED): YarnNeed => {
  const made = yarnNeeded(question, work);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};
const NOTHING: YarnWork = { parts: [], castOn: 0, bindOff: 0, seamsMm: 0, joins: 0, ripped: [] };
const ripped = [{ name: 'the body', stitch: 'stockinette', stitches: 9000 }] as const;

const DRAWS = 40_000;

test.each([
  ['weighed', SWATCHED],
  ['by its loops', WORSTED],
])('Y7: the closed form is the sum of draws, %s', (_, question) => {
  const work: YarnWork = { ...PULLOVER, ripped };
  const drawn = yarnDraws(question, work, normalColumns(4, DRAWS));
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.faults));
  const closed = needed(work, question);
  const pairs = [
    [closed.needed.metres, drawn.value.neededM],
    [closed.needed.grams, drawn.value.neededG],
    [closed.returned!.metres, drawn.value.returnedM],
    [closed.returned!.grams, drawn.value.returnedG],
  ] as const;
  for (const [{ p5, p50, p95 }, column] of pairs) {
    const points = quantilesInPlace(column.slice(), [0.05, 0.5, 0.95]);
    // Sampling: 4 · 2.2 · 0.1 / √40,000 = 0.4 %; the matched log-normal adds less than 0.6 % at these doubts.
    [p5, p50, p95].forEach((point, k) => {
      expect(Math.abs(points[k]! / point - 1)).toBeLessThan(0.01);
    });
  }
});

test('Y7: one summand is its own log-normal, exactly', () => {
  const { extras } = needed({ ...NOTHING, joins: 3 });
  const { p5, p50, p95 } = spreadOfLogNormal(TAIL_MM);
  expect(extras.metres.p5).toBeCloseTo((6 * p5) / 1000, 9);
  expect(extras.metres.p50).toBeCloseTo((6 * p50) / 1000, 9);
  expect(extras.metres.p95).toBeCloseTo((6 * p95) / 1000, 9);
});

// Ohlson et al. 2023, SCF '23, doi 10.1145/3623263.3623355: mass of yarn is linear in counts of stitch types.
test('Y8: yarn is linear in the counts of the work', () => {
  const times = (k: number): YarnWork => ({
    parts: PULLOVER.parts.map((each) => ({ ...each, stitches: each.stitches * k })),
    castOn: PULLOVER.castOn * k,
    bindOff: PULLOVER.bindOff * k,
    seamsMm: PULLOVER.seamsMm * k,
    // Ends are two for each part and join: 2 · (3 + joins).
    joins: (PULLOVER.parts.length + PULLOVER.joins) * k - PULLOVER.parts.length,
    ripped: [],
  });
  fc.assert(
    fc.property(fc.double({ min: 1, max: 50, noNaN: true }), (k) => {
      const [once, more] = [needed(times(1)).needed, needed(times(k)).needed];
      for (const unit of ['metres', 'grams'] as const)
        for (const point of ['p5', 'p50', 'p95'] as const)
          expect(more[unit][point] / once[unit][point]).toBeCloseTo(k, 6);
    }),
    { numRuns: 20 },
  );
});

test('Y8: parts add up to the whole, draw by draw, for they share their luck', () => {
  const normals = normalColumns(2, 50);
  const drawsOf = (work: YarnWork) => {
    const made = yarnDraws(SWATCHED, work, normals);
    if (!made.ok) throw new Error(JSON.stringify(made.faults));
    return made.value.neededG;
  };
  const [body, ...others] = PULLOVER.parts;
  const whole = drawsOf({ ...NOTHING, parts: PULLOVER.parts });
  const parts = [drawsOf({ ...NOTHING, parts: [body!] }), drawsOf({ ...NOTHING, parts: others })];
  whole.forEach((grams, i) => {
    expect(parts[0]![i]! + parts[1]![i]!).toBeCloseTo(grams, 9);
  });
});

test('Y8: every bit of work more needs more yarn; what is ripped comes back in part', () => {
  const base = needed(PULLOVER).needed.grams.p50;
  for (const more of [{ castOn: 900 }, { bindOff: 900 }, { seamsMm: 9000 }, { joins: 90 }])
    expect(needed({ ...PULLOVER, ...more }).needed.grams.p50).toBeGreaterThan(base);
  const { returned, parts } = needed({ ...NOTHING, parts: [...ripped], ripped });
  expect(returned!.grams.p50).toBeLessThan(parts[0]!.grams.p50);
  expect(returned!.grams.p50).toBeGreaterThan(0.85 * parts[0]!.grams.p50);
  expect(needed(NOTHING).needed.grams).toEqual({ p5: 0, p50: 0, p95: 0 });
  expect(needed(NOTHING).returned).toBeNull();
});

test('Y8: a pullover in worsted takes what such pullovers take', () => {
  // From memory of the trade: 400 to 700 g for an adult's pullover in worsted wool.
  const { p50 } = needed(PULLOVER).needed.grams;
  expect(p50).toBeGreaterThan(400);
  expect(p50).toBeLessThan(700);
});
