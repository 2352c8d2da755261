import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Z95 } from '../../stats/index.ts';
import { STITCHES, YARN_WEIGHTS } from '../../textile/index.ts';
import { labelAir } from './air.ts';
import { PUBLISHED_LOOPS_MM, STITCH_RATIOS } from './assumptions.ts';
import { SWATCH, SWATCHED, WORSTED } from './check/questions.ts';
import { yarnPerStitch } from './per-stitch.ts';
import { loopEstimates } from './priors.ts';
import type { WeighedFabric, YarnPerStitch, YarnQuestion } from './types.ts';

const perStitch = (
  question: YarnQuestion,
  stitch: (typeof STITCHES)[number] = 'stockinette',
): YarnPerStitch => {
  const made = yarnPerStitch(question, stitch);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};
const bare: YarnQuestion = { ...WORSTED, gauge: null, metresPer100g: null, weightClass: null };

// Munden 1959, J. Text. Inst. 50, T448: l = kw · w and l = kc · c, here kw 3.8 and kc 5.0, dry relaxed.
test('Y1: 20 stitches and 28 rows over 4 in are 19.3 mm by width and 18.1 mm by row', () => {
  const [width, row] = loopEstimates(WORSTED.gauge);
  // Printed to a tenth of a millimetre.
  expect(width!.loop.median).toBeCloseTo(19.3, 1);
  expect(row!.loop.median).toBeCloseTo(18.1, 1);
  const { lengthMm } = perStitch(WORSTED);
  expect(lengthMm.median).toBeGreaterThan(18);
  expect(lengthMm.median).toBeLessThan(19.4);
});

test.each([
  ['asKnit', 3.8, 5],
  ['dried', 4.1, 5.3],
  ['wet', 4.1, 5.3],
  ['rewashed', 4.2, 5.5],
] as const)('Y1: a gauge %s is read with kw %d and kc %d', (state, kw, kc) => {
  const gauge = {
    ...WORSTED.gauge!,
    state,
    width: { median: 5, logSd: 0 },
    row: { median: 4, logSd: 0 },
  };
  // Munden 1959; Knapton et al. 1968 for the last. Products of two printed numbers.
  expect(loopEstimates(gauge).map(({ loop }) => loop.median)).toEqual([
    expect.closeTo(5 * kw, 9),
    expect.closeTo(4 * kc, 9),
  ]);
});

test('Y1: another stitch than stockinette has no loop relation', () => {
  expect(loopEstimates({ ...WORSTED.gauge!, stitch: 'garter' })).toEqual([]);
  expect(perStitch({ ...WORSTED, gauge: { ...WORSTED.gauge!, stitch: 'garter' } }).from).toBe(
    'yarn-class',
  );
});

test('Y2: a weighed swatch is mass over stitches, its edges counted as rows', () => {
  const heavy: WeighedFabric = { ...SWATCH, massG: 2400, across: 400, up: 560 };
  const { massG, from } = perStitch({ ...bare, weighed: [heavy] });
  expect(from).toBe('weighed');
  // A prior of 0.9 natural logs against an SD of 0.026 moves it by less than a thousandth of the gap.
  expect(massG.median / (2400 / (400 * 561.58))).toBeCloseTo(1, 2);
  expect(massG.logSd).toBeLessThan(0.03);
});

test('Y2: metres of a weighed swatch follow from the label', () => {
  const { massG, lengthMm, metresPer100g } = perStitch(SWATCHED);
  expect(lengthMm.median).toBeCloseTo((massG.median / 100) * metresPer100g.median * 1000, 9);
  expect(massG.logSd).toBeLessThan(lengthMm.logSd);
});

// Singal et al. 2024, Nature Communications 15, 2622: configuration files of the open data set.
test('Y3: ratios between stitches hold both what was published and no difference, nine times in ten', () => {
  expect(PUBLISHED_LOOPS_MM).toEqual({
    stockinette: 11.28,
    garter: 10.55,
    'rib-1x1': 16.1,
    seed: 15.67,
  });
  for (const stitch of ['garter', 'rib-1x1', 'seed'] as const) {
    const { mean, sd } = STITCH_RATIOS[stitch];
    const published = Math.log(PUBLISHED_LOOPS_MM[stitch] / PUBLISHED_LOOPS_MM.stockinette);
    for (const truth of [0, published]) expect(Math.abs(truth - mean)).toBeLessThan(Z95 * sd);
    expect(perStitch(WORSTED, stitch).lengthMm.logSd).toBeGreaterThan(sd);
    expect(perStitch(WORSTED, stitch).from).toBe('stitch-ratio');
  }
});

test('Y4: every class has its published metres per 100 g in the range', () => {
  for (const { weightClass, metresPer100g } of YARN_WEIGHTS) {
    const { median, logSd } = perStitch({ ...bare, weightClass }).metresPer100g;
    const ends = [metresPer100g.low, metresPer100g.high].filter((each) => each !== null);
    // A conversion sheet of yarn classes, metres per 100 g; the air takes up to 2 % (SD).
    for (const end of ends)
      expect(Math.abs(Math.log(end / median))).toBeLessThanOrEqual(Z95 * logSd);
  }
  expect(perStitch(bare).from).toBe('nothing');
  expect(perStitch(bare).lengthMm.logSd).toBeGreaterThan(
    perStitch({ ...bare, weightClass: 4 }).lengthMm.logSd,
  );
});

test('Y5: a label’s mass and a room’s differ by the regain: 48.20 g of a ball of 50 g is in the range', () => {
  const air = labelAir([{ fibre: 'wool', share: 1 }]);
  if (!air.ok) throw new Error('wool is known');
  // Maker’s notes on ball weights: 50 g at 18.25 % are 48.20 g at 14 %; 50 · 1.14 / 1.1825.
  const noted = Math.log(1.14 / 1.1825);
  expect(50 * Math.exp(noted)).toBeCloseTo(48.2, 2);
  expect(Math.abs(noted - air.value.mean)).toBeLessThan(Z95 * air.value.sd);
  const nylon = labelAir([{ fibre: 'nylon', share: 1 }]);
  expect(nylon.ok && Math.abs(nylon.value.mean)).toBeLessThan(0.03);
});

const weighed = fc
  .record({
    stitch: fc.constantFrom(...STITCHES),
    across: fc.integer({ min: 10, max: 200 }),
    up: fc.integer({ min: 10, max: 300 }),
    each: fc.double({ min: 0.004, max: 0.03, noNaN: true }),
    counts: fc.constantFrom<WeighedFabric['counts']>('counted', 'from-extents'),
  })
  .map(
    ({ each, ...rest }): WeighedFabric => ({
      id: 'x',
      name: 'Piece',
      massG: each * rest.across * rest.up,
      ...rest,
    }),
  );

test('Y6: one more weighed piece never widens the yarn in any stitch, by length or by mass', () => {
  fc.assert(
    fc.property(fc.array(weighed, { maxLength: 3 }), weighed, (before, more) => {
      for (const stitch of ['stockinette', 'garter', 'lace'] as const) {
        const [less, after] = [before, [...before, more]].map((all) =>
          perStitch({ ...WORSTED, metresPer100g: null, weighed: all }, stitch),
        );
        // Rounding of a factorisation of some twenty unknowns.
        expect(after!.massG.logSd).toBeLessThanOrEqual(less!.massG.logSd + 1e-10);
        expect(after!.lengthMm.logSd).toBeLessThanOrEqual(less!.lengthMm.logSd + 1e-10);
      }
    }),
    { numRuns: 40 },
  );
});

test('Y6: counted stitches tell more than extents, and a gauge more than a class', () => {
  const from = (counts: WeighedFabric['counts']) =>
    perStitch({ ...WORSTED, weighed: [{ ...SWATCH, counts }] }).massG.logSd;
  expect(from('counted')).toBeLessThan(from('from-extents'));
  expect(perStitch(WORSTED).lengthMm.logSd).toBeLessThan(
    perStitch({ ...WORSTED, gauge: null }).lengthMm.logSd,
  );
});
