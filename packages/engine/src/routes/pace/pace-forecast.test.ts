import { expect, test } from 'vitest';
import { normalColumns } from '../../stats/index.ts';
import { SURE } from './assumptions.ts';
import { PLAN } from './check/plans.ts';
import { drawPace } from './draw-pace.ts';
import { paceForecast } from './pace-forecast.ts';
import { restCaution } from './rest.ts';
import type { PaceForecast, PaceQuestion } from './types.ts';

const DRAWS = 2000;
const forecast = (change: Partial<PaceQuestion> = {}, seed = 1): PaceForecast => {
  const made = paceForecast({ ...PLAN, ...change }, { seed, draws: DRAWS });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};
const chanceOf = (change: Partial<PaceQuestion>): number => forecast(change).date!.chance;

test('PC10: chances of the days and of never add up to one, in order of days', () => {
  const { days, never, done } = forecast({ hours: [0, 0, 0, 0, 0, 0.3, 0.3] });
  expect(never).toBeGreaterThan(0);
  // A sum of some thousand shares of 1/2000.
  expect(days.reduce((sum, { chance }) => sum + chance, 0) + never).toBeCloseTo(1, 9);
  expect(days.at(-1)!.cumulative).toBeCloseTo(1 - never, 9);
  expect(days.map(({ day }) => day)).toEqual(days.map(({ day }) => day).sort());
  expect(days.find(({ cumulative }) => cumulative >= 0.5)?.day ?? null).toBe(done.p50);
});

test('PC10: the same question and seed give the same bytes, as does drawing by columns', () => {
  expect(JSON.stringify(forecast({}, 7))).toBe(JSON.stringify(forecast({}, 7)));
  const drawn = drawPace(PLAN, normalColumns(7, DRAWS));
  expect(drawn.ok && drawn.value.chanceBy(PLAN.by!)).toBe(forecast({}, 7).date!.chance);
  expect(JSON.stringify(forecast({}, 8))).not.toBe(JSON.stringify(forecast({}, 7)));
});

test('PC11: the critical step is the one that, left out, brings the day forward most', () => {
  const knitting = forecast().critical;
  expect(knitting[0]!.name).toBe('knitting the first sleeve');
  expect(knitting.map(({ id }) => id)).toContain('drying');
  for (const step of knitting) {
    expect(step.daysGained).toBeGreaterThan(0);
    expect(step.chanceWithout!).toBeGreaterThanOrEqual(chanceOf({}));
  }
  const damp = { dryingHours: { p5: 700, p50: 900, p95: 1100 } };
  expect(forecast(damp).critical[0]!.name).toBe('drying');
  expect(forecast(damp).sentence).toContain('The most days go to drying.');
  const yarn = { heldOverNeeded: { median: 0.3, logSd: 0.05 }, shopDays: 120 } as const;
  const waiting = forecast({ yarn: { ...yarn, order: 'when-short' } });
  expect(waiting.critical[0]!.name).toBe('waiting for yarn');
  expect(waiting.yarn!.chanceShort).toBe(1);
});

test('PC11: days gained are those of asking again without the step', () => {
  const mean = (change: Partial<PaceQuestion>): number => {
    const { days, never } = forecast(change);
    expect(never).toBe(0);
    const first = Date.parse(PLAN.from);
    return days.reduce(
      (sum, { day, chance }) => sum + (chance * (Date.parse(day) - first)) / 864e5,
      0,
    );
  };
  const { daysGained } = forecast().critical.find(({ id }) => id === 'drying')!;
  // Sums of thousands of shares of 1/2000 times tens of days.
  expect(daysGained).toBeCloseTo(mean({}) - mean({ dryingHours: null }), 6);
});

test('PC12: starting on the latest day, or with the hours told, meets the date; a day later, or a little less, does not', () => {
  const by = '2031-07-31';
  const { latestStart, hoursPerWeek } = forecast({ by }).date!;
  const from = (day: string, shift = 0) =>
    new Date(Date.parse(day) + shift * 864e5).toISOString().slice(0, 10);
  expect(chanceOf({ by, from: latestStart! })).toBeGreaterThanOrEqual(SURE);
  expect(chanceOf({ by, from: from(latestStart!, 1) })).toBeLessThan(SURE);
  const week = PLAN.hours.reduce((a, b) => a + b, 0);
  const times = (factor: number) => PLAN.hours.map((each) => each * factor);
  expect(chanceOf({ by, hours: times(hoursPerWeek! / week) })).toBeGreaterThanOrEqual(SURE);
  // The search is to a thousandth of its range, 12 h over ½ to 1 h: 2 % is more.
  expect(chanceOf({ by, hours: times((0.98 * hoursPerWeek!) / week) })).toBeLessThan(SURE);
});

test('PC12: a date that nothing meets has no start and no hours', () => {
  expect(forecast({ by: '2031-04-10' }).date).toMatchObject({
    chance: 0,
    latestStart: null,
    hoursPerWeek: null,
    hours: null,
  });
  expect(forecast({ by: '2031-04-01' }).notices.map(({ code }) => code)).toContain('past-date');
});

test('PC13: enough yarn needs no day to ask by; a slow shop may be too late; asking at once waits no longer', () => {
  const yarn = {
    heldOverNeeded: { median: 0.8, logSd: 0.1 },
    shopDays: 6,
    order: 'when-short',
  } as const;
  const { yarn: advice, notices } = forecast({ yarn });
  expect(advice!.tooLate).toBe(false);
  expect(notices.map(({ code }) => code)).toEqual(
    expect.arrayContaining(['yarn-short', 'order-by']),
  );
  const enough = { ...yarn, heldOverNeeded: { median: 2, logSd: 0.1 } };
  expect(forecast({ yarn: enough }).notices.map(({ code }) => code)).not.toContain('yarn-short');
  expect(forecast({ yarn: enough }).yarn).toMatchObject({
    lastOrderDay: null,
    tooLate: false,
    waitDays: { p5: 0, p50: 0, p95: 0 },
  });
  expect(forecast({ yarn: { ...yarn, shopDays: 60 } }).yarn!.tooLate).toBe(true);
  const atOnce = forecast({ yarn: { ...yarn, order: 'at-once' } }).yarn!;
  expect(atOnce.waitDays.p95).toBeLessThanOrEqual(advice!.waitDays.p95);
});

test('PC14: what is not known or hardly possible is said; long days bring a word of care', () => {
  const codes = (change: Partial<PaceQuestion>) => forecast(change).notices.map(({ code }) => code);
  expect(codes({ log: [] })).toContain('no-pace');
  expect(codes({})).not.toContain('no-pace');
  expect(codes({ hours: [0, 0, 0, 0, 0, 0, 0] })).toEqual(
    expect.arrayContaining(['no-hours', 'never']),
  );
  const sunday = [0, 0, 0, 0, 0, 3, 3];
  expect(codes({ hours: sunday, by: null })).not.toContain('rest');
  // The hours that the date asks for are longer than those meant.
  expect(codes({ hours: sunday, by: '2031-06-20' })).toContain('rest');
  expect(codes({ hours: [0, 0, 0, 0, 0, 3.5, 3] })).toContain('rest');
  expect(restCaution([3.5])).toMatch(/Up to 3\.5 hours .* ask a doctor or a physiotherapist/);
  expect(restCaution([])).toBeNull();
});

test('PC14: the sentence names the days and the chance', () => {
  const { sentence, done, date } = forecast();
  const [year, month, day] = done.p50!.split('-').map(Number);
  expect(sentence).toContain(`by ${day} ${['April', 'May', 'June'][month! - 4]} ${year}`);
  expect(sentence).toContain(`15 May 2031 is ${Math.round(date!.chance * 100)} %`);
});
