import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type NormalColumns, normalColumns } from '../../stats/index.ts';
import { PLAN } from './check/plans.ts';
import { drawPace } from './draw-pace.ts';
import { isoDay } from './iso-day.ts';
import type { PaceDraws, PaceQuestion } from './types.ts';

const NORMALS = normalColumns(5, 200);
const drawn = (question: PaceQuestion, normals: NormalColumns = NORMALS): PaceDraws => {
  const draws = drawPace(question, normals);
  if (!draws.ok) throw new Error(JSON.stringify(draws.faults));
  return draws.value;
};

const part = fc.record({
  name: fc.constantFrom('back', 'front', 'sleeve'),
  stitches: fc.integer({ min: 0, max: 40_000 }),
  fabric: fc.constantFrom<'plain' | 'worked' | 'ripped'>('plain', 'worked', 'ripped'),
});
const question = fc
  .record({
    parts: fc.array(part, { maxLength: 4 }),
    hours: fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 7, maxLength: 7 }),
    first: fc.integer({ min: 20_000, max: 25_000 }),
    away: fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 5 }),
    when: fc.option(
      fc.constantFrom<'before-drying' | 'after-drying'>('before-drying', 'after-drying'),
    ),
    dry: fc.boolean(),
    yarn: fc.option(
      fc.record({
        median: fc.double({ min: 0, max: 2, noNaN: true }),
        shopDays: fc.integer({ min: 0, max: 30 }),
        order: fc.constantFrom<'at-once' | 'when-short'>('at-once', 'when-short'),
      }),
    ),
  })
  .map(
    ({ parts, hours, first, away, when, dry, yarn }): PaceQuestion => ({
      ...PLAN,
      parts,
      hours,
      from: isoDay(first),
      away: away.map((day) => isoDay(first + day)),
      finishing: when && { seamsMm: 1500, ends: 8, when },
      dryingHours: dry ? PLAN.dryingHours : null,
      yarn: yarn && {
        heldOverNeeded: { median: yarn.median, logSd: 0.1 },
        shopDays: yarn.shopDays,
        order: yarn.order,
      },
      by: null,
    }),
  );

const notLater = (sooner: Float64Array, later: Float64Array): void => {
  sooner.forEach((day, i) => {
    expect(day).toBeLessThanOrEqual(later[i]!);
  });
};

test('PC7: a later date never lowers the chance', () => {
  fc.assert(
    fc.property(question, fc.array(fc.integer({ min: -5, max: 400 })), (asked, days) => {
      const draws = drawn(asked);
      const first = Date.parse(asked.from) / 86_400_000;
      const chances = [...days]
        .sort((a, b) => a - b)
        .map((day) => draws.chanceBy(isoDay(first + day)));
      chances.forEach((chance, k) => {
        expect(chance).toBeGreaterThanOrEqual(chances[k - 1] ?? 0);
      });
      expect(draws.chanceBy(isoDay(first - 1))).toBe(0);
    }),
    { numRuns: 60 },
  );
});

test('PC8: more hours never make any draw later', () => {
  fc.assert(
    fc.property(question, fc.integer({ min: 0, max: 6 }), (asked, day) => {
      const hours = asked.hours.map((each, k) => (k === day ? each + 2.5 : each));
      notLater(drawn({ ...asked, hours }).days, drawn(asked).days);
    }),
    { numRuns: 60 },
  );
});

test('PC8: less to knit, no day away, enough yarn and no wash never make any draw later', () => {
  fc.assert(
    fc.property(question, (asked) => {
      const before = drawn(asked).days;
      const less = asked.parts.map((each) => ({ ...each, stitches: each.stitches / 2 }));
      notLater(drawn({ ...asked, away: [] }).days, before);
      notLater(drawn({ ...asked, yarn: null }).days, before);
      notLater(drawn({ ...asked, dryingHours: null }).days, before);
      notLater(
        drawn({ ...asked, parts: less, yarn: null }).days,
        drawn({ ...asked, yarn: null }).days,
      );
    }),
    { numRuns: 60 },
  );
});

test('PC9: plans are drawn on one luck: a part in common takes the same hours, draw by draw', () => {
  const parts = PLAN.parts.slice(0, 1);
  const bare = { ...PLAN, finishing: null };
  const alone = drawn({ ...bare, parts }).hours;
  const both = drawn({ ...bare, parts: [...parts, ...parts] }).hours;
  both.forEach((hours, i) => {
    // One addition of two equal numbers is exact.
    expect(hours).toBe(2 * alone[i]!);
  });
});
