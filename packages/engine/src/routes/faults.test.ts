import { expect, test } from 'vitest';
import { explain, grams, mm } from '../units/index.ts';
import { QUESTION } from './check/questions.ts';
import { routes } from './routes.ts';
import { sizeByNeedle } from './size-by-needle.ts';
import type { RoutesOptions, RoutesQuestion } from './types.ts';

type Change = Partial<RoutesQuestion>;
const pace = (change: Partial<RoutesQuestion['pace']>): Change => ({
  pace: { ...QUESTION.pace, ...change },
});
const lot = (change: object): Change => ({
  stock: {
    lots: [{ dyeLot: '1', skeins: 2, gramsEach: 50, metresEach: 100, ...change }],
    leftG: null,
  },
});
const forecast = (change: Partial<RoutesQuestion['forecast']>): Change => ({
  forecast: { ...QUESTION.forecast, ...change },
});
const weighed = {
  id: 'w',
  name: 'Swatch',
  stitch: 'stockinette',
  massG: 14,
  across: 36,
  up: 48,
  counts: 'counted',
} as const;

const CASES: readonly (readonly [string, Change, RegExp])[] = [
  [
    'a weight below 0',
    { weights: { fit: -1, time: 1, yarn: 1 } },
    /^weights\.fit: a weight lies between 0 and 1 \(given: -1\)/,
  ],
  ['a weight above 1', { weights: { fit: 1, time: 5, yarn: 1 } }, /^weights\.time: .*\(given: 5\)/],
  [
    'a weight that is no number',
    { weights: { fit: 1, time: 1, yarn: Number.NaN } },
    /^weights\.yarn: /,
  ],
  ['no weight at all', { weights: { fit: 0, time: 0, yarn: 0 } }, /^weights: nothing counts/],
  [
    'more than a whole piece',
    { progress: [{ piece: 'back', share: 1.2 }] },
    /^progress\[0\]\.share: this is no share/,
  ],
  [
    'a piece twice',
    {
      progress: [
        { piece: 'back', share: 1 },
        { piece: 'back', share: 0 },
      ],
    },
    /^progress\[1\]\.piece: this piece is given twice/,
  ],
  [
    'a person twice',
    { people: [...QUESTION.people, ...QUESTION.people] },
    /^people\[1\]\.id: two people/,
  ],
  [
    'a body of nothing',
    { people: [{ id: 'x', name: 'X', body: [{ body: 'chest', mm: mm(0), from: 'measured' }] }] },
    /^people\[0\]\.body\[0\]\.mm: this is no measurement/,
  ],
  [
    'a needle like a pole',
    {
      forecast: {
        ...QUESTION.forecast,
        specimens: QUESTION.forecast.specimens.map((each) => ({ ...each, needle: mm(400) })),
      },
    },
    /^forecast\.specimens\[0\]\.needle: no needle/,
  ],
  [
    'a skein that comes after years',
    pace({ shopDays: 4000 }),
    /^pace\.shopDays: .*nothing where no skein/,
  ],
  [
    'a week of six days',
    pace({ hours: [1, 1, 1, 1, 1, 1] }),
    /^pace\.hours: a week has seven days/,
  ],
  [
    'a day of thirty hours',
    pace({ hours: [1, 1, 1, 1, 1, 1, 30] }),
    /^pace\.hours\[6\]: a day has no such hours/,
  ],
  ['a day that is none', pace({ away: ['2031-02-30'] }), /^pace\.away\[0\]: this is no day/],
  [
    'stitches in no time',
    pace({ log: [{ minutes: 0, stitches: 100, fabric: 'plain' }] }),
    /^pace\.log\[0\]\.minutes: /,
  ],
  [
    'a pace of no hand',
    pace({ log: [{ minutes: 1, stitches: 5000, fabric: 'plain' }] }),
    /^pace\.log\[0\]: nobody knits/,
  ],
  ['a first day that is none', { from: 'today' }, /^from: this is no day/],
  ['a date that is none', { by: '14.2.2031' }, /^by: this is no day/],
  [
    'drying hours backwards',
    { dryingHours: { p5: 60, p50: 30, p95: 20 } },
    /^dryingHours: these are no hours in order/,
  ],
  ['skeins below none', lot({ skeins: -1 }), /^stock\.lots\[0\]\.skeins: /],
  [
    'skeins of unknown size',
    lot({ gramsEach: null, metresEach: null }),
    /^stock\.lots\[0\]\.gramsEach: the size of its skeins/,
  ],
  ['less than no yarn left', { stock: { lots: [], leftG: -5 } }, /^stock\.leftG: this is no mass/],
  [
    'a swatch of no mass',
    { weighed: [{ ...weighed, massG: 0 }] },
    /^weighed\[0\]\.massG: this is no mass/,
  ],
  [
    'a swatch without rows',
    { weighed: [{ ...weighed, up: 0 }] },
    /^weighed\[0\]\.up: without its stitches/,
  ],
  ['yarn of no length', forecast({ metresPer100g: 0 }), /metresPer100g: no yarn/],
  [
    'no measurement',
    forecast({ measurements: [] }),
    /^forecast\.measurements: nothing says how large/,
  ],
  [
    'a size that is not there',
    forecast({ chosen: 12 }),
    /^forecast\.chosen: the pattern has no such size \(given: 12\)/,
  ],
];

test.each(CASES)('O19: %s is a fault that says what and how to mend it', (_, change, wanted) => {
  const result = routes({ ...QUESTION, ...change }, { draws: 100 });
  expect(result.ok).toBe(false);
  const said = result.ok ? [] : result.faults.map(explain);
  expect(said[0]).toMatch(wanted);
  for (const each of said) expect(each).toMatch(/\. [A-Z].*\.$/);
});

const OPTIONS: readonly (readonly [string, RoutesOptions, RegExp])[] = [
  ['too few draws', { draws: 10 }, /^draws: .*from 100 to/],
  ['half a draw', { draws: 1000.5 }, /^draws: /],
  ['a seed below 0', { seed: -1 }, /^seed: this is no seed/],
];

test.each(OPTIONS)('O19: %s is a fault', (_, options, wanted) => {
  for (const result of [routes(QUESTION, options), sizeByNeedle(QUESTION, options)]) {
    const said = result.ok ? [] : result.faults.map(explain);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(wanted);
  }
});

test('O19: several faults are told at once', () => {
  const result = routes({ ...QUESTION, from: 'x', by: 'y', weights: { fit: 2, time: 0, yarn: 0 } });
  expect(result.ok ? 0 : result.faults.length).toBe(3);
});

test('O19: nothing but a measurement is enough for an answer', () => {
  const bare: RoutesQuestion = {
    ...QUESTION,
    forecast: { ...QUESTION.forecast, wanted: [], specimens: [], measured: [], mass: grams(400) },
    people: [],
    progress: [],
    stock: null,
    by: null,
    pace: { log: [], hours: [0, 0, 0, 0, 0, 0, 0], away: [], shopDays: null },
  };
  const result = routes(bare, { draws: 200 });
  expect(result.ok).toBe(true);
  const { routes: all, notices } = result.ok ? result.value : { routes: [], notices: [] };
  for (const route of all) {
    expect(route.chanceAllFit).toBeNull();
    expect(route.chanceOfYarn).toBeNull();
    expect(route.chanceByDate).toBeNull();
  }
  expect(notices.map(({ code }) => code)).toEqual(
    expect.arrayContaining(['nothing-wanted', 'no-pace', 'no-hours', 'no-stock']),
  );
});
