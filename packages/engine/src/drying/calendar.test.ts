import fc from 'fast-check';
import ical from 'ical.js';
import { expect, test } from 'vitest';
import { type CalendarAsked, dryingCalendar } from './calendar.ts';
import { escapeText, foldLine, utcStamp } from './calendar-text.ts';
import type { ClockMark } from './types.ts';

const within = { p5: 1, p50: 2, p95: 3 };
const MARKS: readonly ClockMark[] = [
  { kind: 'look', id: 'first-look', hours: 2.5, within, text: 'Weigh it; press, and look.' },
  { kind: 'turn', id: 'turn', hours: 5, within, text: 'Turn it over.' },
  { kind: 'dry', id: 'dry', hours: 20, within, text: 'Weigh it.' },
];
const ASKED: CalendarAsked = {
  id: 'drying-7',
  garment: 'Grey pullover',
  startMs: Date.UTC(2024, 1, 28, 21, 45),
  nowMs: Date.UTC(2024, 1, 28, 22, 0),
  revision: 2,
  marks: MARKS,
};
const fileOf = (change: Partial<CalendarAsked> = {}): string => {
  const made = dryingCalendar({ ...ASKED, ...change });
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};
const eventsOf = (file: string) =>
  new ical.Component(ical.parse(file))
    .getAllSubcomponents('vevent')
    .map((each) => new ical.Event(each));

test('D17: a separate reader finds each mark at its time, over midnight and a leap day', () => {
  const events = eventsOf(fileOf());
  expect(events.map((each) => each.startDate.toJSDate().toISOString())).toEqual([
    '2024-02-29T00:15:00.000Z',
    '2024-02-29T02:45:00.000Z',
    '2024-02-29T17:45:00.000Z',
  ]);
  expect(events.map((each) => each.summary)).toEqual([
    'Weigh Grey pullover',
    'Turn Grey pullover',
    'Grey pullover is as likely dry as not: weigh it',
  ]);
  expect(events[0]!.description).toBe('Weigh it; press, and look.');
  expect(events[0]!.duration.toSeconds()).toBe(900);
});

test('D17: every event carries what RFC 5545 requires, once, and an alarm', () => {
  const root = new ical.Component(ical.parse(fileOf()));
  // Section 3.6: PRODID and VERSION of a calendar; 3.6.1: UID, DTSTAMP, DTSTART of an event;
  // 3.6.6: ACTION, TRIGGER and DESCRIPTION of a display alarm.
  for (const name of ['prodid', 'version']) expect(root.getAllProperties(name)).toHaveLength(1);
  for (const event of root.getAllSubcomponents('vevent')) {
    for (const name of ['uid', 'dtstamp', 'dtstart', 'sequence'])
      expect(event.getAllProperties(name)).toHaveLength(1);
    const [alarm, ...others] = event.getAllSubcomponents('valarm');
    expect(others).toEqual([]);
    for (const name of ['action', 'trigger', 'description'])
      expect(alarm!.getAllProperties(name)).toHaveLength(1);
  }
});

test('D17: a later file moves the same events', () => {
  const [first] = eventsOf(fileOf());
  const [later] = eventsOf(fileOf({ revision: 3, startMs: ASKED.startMs + 3_600_000 }));
  expect(later!.uid).toBe(first!.uid);
  expect(later!.sequence).toBeGreaterThan(first!.sequence);
  expect(new Set(eventsOf(fileOf()).map((each) => each.uid)).size).toBe(MARKS.length);
});

test('D18: any name comes back as it was, and no line is over 75 octets', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (name) => {
      const file = fileOf({ garment: `x${name}x` });
      for (const line of file.split('\r\n'))
        expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      expect(eventsOf(file)[1]!.summary).toBe(`Turn x${name}x`);
    }),
  );
});

test('D18: text is escaped as in section 3.3.11 and folded as in section 3.1', () => {
  expect(escapeText('a\\b;c,d\r\ne\nf\u0007g:"h"')).toBe('a\\\\b\\;c\\,d\\ne\\nfg:"h"');
  const folded = foldLine(`SUMMARY:${'ß'.repeat(60)}`);
  expect(folded.split('\r\n')).toHaveLength(3);
  expect(folded.replaceAll('\r\n ', '')).toBe(`SUMMARY:${'ß'.repeat(60)}\r\n`);
  expect(utcStamp(Date.UTC(2024, 2, 7, 14, 5, 9, 999))).toBe('20240307T140509Z');
});

test.each([
  [{ startMs: Number.NaN }, 'startMs'],
  [{ nowMs: 0 }, 'nowMs'],
  [{ id: 'a b' }, 'id'],
  [{ marks: [] }, 'marks'],
])('D18: %j is a fault of %s', (change, field) => {
  const made = dryingCalendar({ ...ASKED, ...change });
  expect(!made.ok && made.faults.map((each) => each.field)).toEqual([field]);
});
