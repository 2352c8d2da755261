import { expect, test } from 'vitest';
import { normalColumns } from '../../stats/index.ts';
import { PLAN } from './check/plans.ts';
import { drawPace } from './draw-pace.ts';
import { paceForecast } from './pace-forecast.ts';
import type { PaceQuestion } from './types.ts';

const yarn = { heldOverNeeded: { median: 1, logSd: 0.1 }, shopDays: 3, order: 'at-once' } as const;
const part = (stitches: number) => ({
  parts: [{ name: 'back', stitches, fabric: 'plain' as const }],
});
const entry = (minutes: number, stitches: number) => ({
  log: [{ minutes, stitches, fabric: 'plain' as const }],
});

const CASES: readonly (readonly [Partial<PaceQuestion>, string, string])[] = [
  [part(-1), 'pace-stitches', 'parts[0].stitches'],
  [part(Number.NaN), 'pace-stitches', 'parts[0].stitches'],
  [entry(0, 100), 'pace-minutes', 'log[0].minutes'],
  [entry(10, 0), 'pace-stitches', 'log[0].stitches'],
  [entry(1, 900), 'pace-implausible', 'log[0]'],
  [entry(600, 2), 'pace-implausible', 'log[0]'],
  [{ hours: [1, 2, 3] }, 'pace-hours', 'hours'],
  [{ hours: [1, 1, 1, 1, 1, 1, 25] }, 'pace-hours', 'hours[6]'],
  [{ hours: [1, 1, -1, 1, 1, 1, 1] }, 'pace-hours', 'hours[2]'],
  [{ from: '2031-02-29' }, 'pace-day', 'from'],
  [{ from: 'tomorrow' }, 'pace-day', 'from'],
  [{ by: '2031-5-1' }, 'pace-day', 'by'],
  [{ away: ['2031-04-10', ''] }, 'pace-day', 'away[1]'],
  [
    { finishing: { seamsMm: -1, ends: 0, when: 'after-drying' } },
    'pace-finishing',
    'finishing.seamsMm',
  ],
  [
    { finishing: { seamsMm: 0, ends: Number.NaN, when: 'after-drying' } },
    'pace-finishing',
    'finishing.ends',
  ],
  [{ dryingHours: { p5: 0, p50: 1, p95: 2 } }, 'pace-drying', 'dryingHours'],
  [{ dryingHours: { p5: 9, p50: 3, p95: 12 } }, 'pace-drying', 'dryingHours'],
  [{ yarn: { ...yarn, shopDays: -2 } }, 'pace-shop-days', 'yarn.shopDays'],
  [
    { yarn: { ...yarn, heldOverNeeded: { median: -1, logSd: 0 } } },
    'pace-yarn',
    'yarn.heldOverNeeded',
  ],
];

test.each(CASES)('PC16: %j is %s of %s, and says how to mend it', (change, code, field) => {
  const made = paceForecast({ ...PLAN, ...change });
  expect(made.ok).toBe(false);
  if (made.ok) return;
  expect(made.faults.map((each) => [each.code, each.field])).toEqual([[code, field]]);
  expect(made.faults[0]!.problem).not.toBe('');
  expect(made.faults[0]!.mend).toMatch(/^[A-Z].*\.$/);
  expect(drawPace({ ...PLAN, ...change }, normalColumns(1, 10))).toEqual(made);
});

test('PC16: every fault of a question is told at once; no draws are a fault', () => {
  const made = paceForecast({ ...PLAN, ...part(-1), from: '', hours: [] }, { draws: 0.5 });
  expect(!made.ok && made.faults.map(({ field }) => field)).toEqual([
    'parts[0].stitches',
    'hours',
    'from',
    'draws',
  ]);
});
