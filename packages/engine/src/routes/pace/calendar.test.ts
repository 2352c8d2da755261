import ical from 'ical.js';
import { expect, test } from 'vitest';
import { once } from '../../../../../scripts/lib/once.mjs';
import { type PaceCalendarAsked, paceCalendar } from './calendar.ts';
import { PLAN } from './check/plans.ts';
import { paceForecast } from './pace-forecast.ts';

const forecast = once(() => {
  const made = paceForecast(
    {
      ...PLAN,
      yarn: { heldOverNeeded: { median: 0.8, logSd: 0.1 }, shopDays: 6, order: 'when-short' },
    },
    { draws: 500 },
  );
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
});
const asked = (): PaceCalendarAsked => ({
  id: 'pace-1',
  garment: 'Grey, warm; pullover',
  nowMs: Date.UTC(2031, 3, 9, 9),
  revision: 1,
  milestones: forecast().milestones,
  yarn: forecast().yarn,
  by: '2031-12-31',
});
const fileOf = (change: Partial<PaceCalendarAsked> = {}): string => {
  const file = paceCalendar({ ...asked(), ...change });
  if (!file.ok) throw new Error(JSON.stringify(file.faults));
  return file.value;
};
const eventsOf = (file: string) =>
  new ical.Component(ical.parse(file))
    .getAllSubcomponents('vevent')
    .map((each) => new ical.Event(each));

test('PC15: a separate reader finds every milestone on its likely day, all day long', () => {
  const events = eventsOf(fileOf());
  expect(events.map((each) => each.startDate.toString())).toEqual([
    ...forecast().milestones.map(({ middle }) => middle),
    forecast().yarn!.lastOrderDay,
    '2031-12-31',
  ]);
  for (const each of events) {
    expect(each.startDate.isDate).toBe(true);
    expect(each.duration.toSeconds()).toBe(86_400);
  }
  expect(events.at(-1)!.endDate.toString()).toBe('2032-01-01');
  expect(events[0]!.summary).toBe('Grey, warm; pullover: knitting the front ends');
  expect(events.map(({ summary }) => summary)).toContain('Grey, warm; pullover is done');
});

test('PC15: a later file moves the same events; lines are no longer than 75 octets', () => {
  const [before, after] = [eventsOf(fileOf()), eventsOf(fileOf({ revision: 2 }))];
  expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
  expect(new Set(before.map(({ uid }) => uid)).size).toBe(before.length);
  expect(after[0]!.sequence).toBeGreaterThan(before[0]!.sequence);
  for (const line of fileOf({ garment: 'ß'.repeat(90) }).split('\r\n'))
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
});

test.each([
  [{ nowMs: 0 }, 'nowMs'],
  [{ id: 'a b' }, 'id'],
  [{ by: '2031-02-30' }, 'milestones'],
  [{ milestones: [], yarn: null, by: null }, 'milestones'],
])('PC15: %j is a fault of %s', (change, field) => {
  const file = paceCalendar({ ...asked(), ...change });
  expect(!file.ok && file.faults.map((each) => each.field)).toEqual([field]);
});
