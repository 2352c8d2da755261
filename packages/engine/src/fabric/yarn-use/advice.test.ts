import fc from 'fast-check';
import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { add, constant, normalColumns, scale } from '../../stats/index.ts';
import { skeinAdvice } from './advice.ts';
import { MOST_SHORT } from './assumptions.ts';
import { PULLOVER, SKEINS, SWATCHED } from './check/questions.ts';
import { heldDraws, yarnHeld } from './held.ts';
import { massForm, yarnModel } from './model.ts';
import { asLogNormal } from './per-stitch.ts';
import type { SkeinAdvice, YarnStock, YarnWork } from './types.ts';

const DRAWS = 2000;
const advice = (work: YarnWork, stock: YarnStock, draws = DRAWS): SkeinAdvice => {
  const made = skeinAdvice(SWATCHED, work, stock, { seed: 3, draws });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};
const lots = (...skeins: readonly number[]): YarnStock => ({
  lots: skeins.map((each, k) => ({
    dyeLot: 'ABCD'[k]!,
    skeins: each,
    gramsEach: 50,
    metresEach: null,
  })),
  leftG: null,
});

test('Y9: more yarn never raises the chance of running out, nor the skeins to buy', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 0, max: 5 }),
      fc.integer({ min: 0, max: 9000 }),
      (skeins, more, stitches) => {
        const work = {
          ...PULLOVER,
          ripped: [{ name: 'x', stitch: 'stockinette' as const, stitches }],
        };
        const [less, after] = [
          advice(work, lots(skeins), 300),
          advice(work, lots(skeins + more), 300),
        ];
        expect(after.chanceShort).toBeLessThanOrEqual(less.chanceShort);
        expect(after.buy!).toBeLessThanOrEqual(less.buy!);
        expect(advice(PULLOVER, lots(skeins), 300).chanceShort).toBeGreaterThanOrEqual(
          less.chanceShort,
        );
      },
    ),
    { numRuns: 30 },
  );
});

test('Y9: what is bought is enough and one less is not', () => {
  const short = advice(PULLOVER, lots(7));
  expect(short.chanceShort).toBeGreaterThan(0.5);
  expect(short.chanceWithBuy!).toBeLessThan(MOST_SHORT);
  expect(advice(PULLOVER, lots(7 + short.buy!)).buy).toBe(0);
  expect(advice(PULLOVER, lots(7 + short.buy! - 1)).chanceShort).toBeGreaterThanOrEqual(MOST_SHORT);
  expect(short.sentence).toContain(`${short.buy} more skein`);
});

test('Y10: with one part and a lot of it the chance is a normal integral of log held over needed', () => {
  const work: YarnWork = {
    parts: [{ name: 'x', stitch: 'stockinette', stitches: 46_000 }],
    castOn: 0,
    bindOff: 0,
    seamsMm: 0,
    joins: 0,
    ripped: [],
  };
  const model = yarnModel(SWATCHED);
  if (!model.ok) throw new Error('the question is sound');
  const { forms, post } = model.value;
  // The two ends of the one piece are left out of the closed form: 0.3 m of 870.
  const need = add(
    massForm(forms.stockinette, forms.metres),
    forms.drift,
    constant(Math.log(46_000)),
  );
  const held = add(forms.air, forms.ball, constant(Math.log(500)));
  const { median, logSd } = asLogNormal(post, add(held, scale(need, -1)));
  const chance = jStat.normal.cdf(-Math.log(median) / logSd, 0, 1);
  const drawn = advice(work, lots(10), 40_000).chanceShort;
  // Four standard errors, 4 · 0.5 / 200, and the ends: 0.04 % of the yarn at 8 per unit of log.
  expect(Math.abs(drawn - chance)).toBeLessThan(0.015);
  expect(chance).toBeGreaterThan(0.02);
  expect(chance).toBeLessThan(0.98);
});

test('Y11: yarn held is skeins by their label; what was weighed stands for all, and is surer', () => {
  const labelled = yarnHeld(SWATCHED, SKEINS);
  const weighed = yarnHeld(SWATCHED, { ...SKEINS, leftG: 480 });
  if (!labelled.ok || !weighed.ok) throw new Error('the stock is sound');
  // 500 g by label less a little for the air of a room: wool is sold at a higher regain.
  expect(labelled.value.grams.p50).toBeGreaterThan(480);
  expect(labelled.value.grams.p50).toBeLessThan(505);
  expect(labelled.value.lots.map(({ dyeLot }) => dyeLot)).toEqual(['A', 'B']);
  expect(weighed.value.grams.p50).toBeCloseTo(480, 9);
  const width = ({ p5, p95 }: { p5: number; p95: number }) => Math.log(p95 / p5);
  expect(width(weighed.value.grams)).toBeLessThan(width(labelled.value.grams));
  expect(weighed.value.metres.p50 / weighed.value.grams.p50).toBeCloseTo(1.8, 0);
});

test('Y11: metres alone, and grams alone, hold the same yarn where the label agrees with itself', () => {
  const only = (gramsEach: number | null, metresEach: number | null) => {
    const stock = { lots: [{ dyeLot: 'A', skeins: 10, gramsEach, metresEach }], leftG: null };
    const held = heldDraws(SWATCHED, stock, normalColumns(1, 4000));
    if (!held.ok) throw new Error(JSON.stringify(held.faults));
    return held.value.reduce((sum, each) => sum + each, 0) / 4000;
  };
  // The label says 180 m in 100 g; the swatch moves that by part of its 3 %.
  expect(Math.abs(only(50, null) / only(null, 90) - 1)).toBeLessThan(0.04);
  expect(only(50, 90)).toBe(only(50, null));
});

test('Y12: a lot that suffices alone is named; else whole parts share lots; else lots are mixed', () => {
  const one = advice(PULLOVER, lots(14, 4)).lots;
  expect(one).toMatchObject({ kind: 'one', alone: [{ dyeLot: 'A' }] });
  const parts = advice(PULLOVER, lots(8, 7)).lots;
  expect(parts.kind).toBe('by-part');
  expect(parts.parts).toHaveLength(PULLOVER.parts.length);
  expect(new Set(parts.parts.map(({ dyeLot }) => dyeLot)).size).toBe(2);
  const body = {
    ...PULLOVER,
    parts: [{ name: 'all', stitch: 'stockinette' as const, stitches: 47_000 }],
  };
  expect(advice(body, lots(8, 7)).lots.kind).toBe('mixed');
  expect(advice(PULLOVER, lots(3, 2)).lots.kind).toBe('short');
  expect(advice(PULLOVER, { lots: [], leftG: 900 }).lots.kind).toBe('no-lots');
});

test('Y12: where lots are mixed, the place to change by is reached with the first lot in 95 % of draws', () => {
  const whole = { name: 'all', stitch: 'stockinette' as const, stitches: 47_000 };
  const body = { ...PULLOVER, parts: [whole] };
  const { changes } = advice(body, lots(8, 7)).lots;
  expect(changes).toMatchObject([{ from: 'A', to: 'B', part: 'all' }]);
  const upTo = (share: number) => {
    const work = { ...body, parts: [{ ...whole, stitches: 47_000 * share }] };
    const ends = { castOn: share * 280, bindOff: share * 120, seamsMm: share * 1200 };
    return advice({ ...work, ...ends, joins: 0 }, lots(8)).chanceShort;
  };
  // Ends and joins are spread over the part, not at its place: 1 % of the yarn.
  expect(upTo(changes[0]!.share - 0.015)).toBeLessThan(0.05);
  expect(upTo(changes[0]!.share + 0.03)).toBeGreaterThan(0.05);
});

test('Y12: each lot of a share by parts holds what its parts need', () => {
  const { parts } = advice(PULLOVER, lots(8, 7)).lots;
  for (const lot of new Set(parts.map(({ dyeLot }) => dyeLot))) {
    const mine = parts.filter(({ dyeLot }) => dyeLot === lot).map(({ part }) => part);
    const work = { ...PULLOVER, parts: PULLOVER.parts.filter(({ name }) => mine.includes(name)) };
    const skeins = lot === 'A' ? 8 : 7;
    expect(advice(work, lots(skeins)).chanceShort).toBeLessThan(2 * MOST_SHORT);
  }
});

test('Y13: the same seed gives the same bytes; the columns of a caller give its luck', () => {
  expect(JSON.stringify(advice(PULLOVER, SKEINS))).toBe(JSON.stringify(advice(PULLOVER, SKEINS)));
  const own = skeinAdvice(SWATCHED, PULLOVER, SKEINS, { normals: normalColumns(3, DRAWS) });
  expect(own.ok && own.value.chanceShort).toBe(advice(PULLOVER, SKEINS).chanceShort);
});
