import { escapeText, foldLine, utcStamp } from '../../drying/index.ts';
import { type Fault, fail, ok, type Result } from '../../units/index.ts';
import { paceFault } from './faults.ts';
import { dayNumber, isoDay } from './iso-day.ts';
import type { Milestone, YarnAdvice } from './types.ts';
import { dayInWords } from './words.ts';

export interface PaceCalendarAsked {
  /** Names the plan for good, so that a newer file moves the events of an older: letters, digits, hyphens. */
  readonly id: string;
  readonly garment: string;
  /** The time now, milliseconds since 1970, UTC. */
  readonly nowMs: number;
  /** Rises with each file of the same plan. */
  readonly revision: number;
  readonly milestones: readonly Milestone[];
  readonly yarn: YarnAdvice | null;
  /** ISO day that is wanted; null where none. */
  readonly by: string | null;
}

interface DayEvent {
  readonly id: string;
  readonly day: string;
  readonly title: string;
  readonly text: string;
}

const range = ({ early, late }: Milestone): string => {
  const until = late === null ? 'three years on or later' : dayInWords(late);
  return early === null || early === late
    ? `Most likely by ${until}.`
    : `Nine times in ten between ${dayInWords(early)} and ${until}.`;
};

const titleOf = ({ id, name }: Milestone, garment: string): string =>
  id === 'done' ? `${garment} is done` : `${garment}: ${name} ends`;

const eventsOf = ({ milestones, yarn, by, garment }: PaceCalendarAsked): DayEvent[] => [
  ...milestones.flatMap((each): DayEvent[] =>
    each.middle === null
      ? []
      : [
          {
            id: each.id.replace(':', '-'),
            day: each.middle,
            title: titleOf(each, garment),
            text: range(each),
          },
        ],
  ),
  ...(yarn?.lastOrderDay && !yarn.tooLate
    ? [
        {
          id: 'order',
          day: yarn.lastOrderDay,
          title: `${garment}: last day to ask for yarn`,
          text: 'Later, knitting may have to wait for it.',
        },
      ]
    : []),
  ...(by === null
    ? []
    : [
        {
          id: 'by',
          day: by,
          title: `${garment} is wanted`,
          text: 'The day that it was wanted by.',
        },
      ]),
];

const dateOf = (iso: string): string => iso.replaceAll('-', '');

/** All day long: DTEND is the day after, which is not part of it (RFC 5545, section 3.6.1). */
const linesOf = ({ id, nowMs, revision }: PaceCalendarAsked, event: DayEvent): string[] => [
  'BEGIN:VEVENT',
  `UID:${id}-${event.id}@dryflat.invalid`,
  `DTSTAMP:${utcStamp(nowMs)}`,
  `SEQUENCE:${revision}`,
  `DTSTART;VALUE=DATE:${dateOf(event.day)}`,
  `DTEND;VALUE=DATE:${dateOf(isoDay(dayNumber(event.day)! + 1))}`,
  `SUMMARY:${escapeText(event.title)}`,
  `DESCRIPTION:${escapeText(event.text)}`,
  'TRANSP:TRANSPARENT',
  'END:VEVENT',
];

/** Milliseconds of the years 2000 to 2200: beyond, a clock is wrong. */
const isTime = (ms: number): boolean => ms >= 946_684_800_000 && ms <= 7_258_118_400_000;

const faultsOf = (asked: PaceCalendarAsked, events: readonly DayEvent[]): Fault[] => [
  ...(isTime(asked.nowMs)
    ? []
    : [
        paceFault(
          'time',
          'nowMs',
          asked.nowMs,
          'this is no time of day in this age',
          'Set the clock, and begin again.',
        ),
      ]),
  ...(/^[A-Za-z0-9-]+$/.test(asked.id)
    ? []
    : [
        paceFault(
          'id',
          'id',
          asked.id,
          'an event cannot be named like this',
          'Use letters, digits and hyphens.',
        ),
      ]),
  ...(events.every(({ day }) => dayNumber(day) !== null)
    ? []
    : [
        paceFault(
          'day',
          'milestones',
          events.map(({ day }) => day).join(', '),
          'one of these is no day of the calendar',
          'Write days like 2031-04-09.',
        ),
      ]),
  ...(events.length > 0
    ? []
    : [
        paceFault(
          'no-days',
          'milestones',
          '',
          'there is no day to put down',
          'Give some hours for knitting first.',
        ),
      ]),
];

/**
 * A calendar file (iCalendar, RFC 5545): a day for the likely end of each step, the last day to ask
 * for yarn, and the day that is wanted. Events of an earlier file of the same id are moved. Pure:
 * the time is handed in.
 */
export const paceCalendar = (asked: PaceCalendarAsked): Result<string> => {
  const events = eventsOf(asked);
  const faults = faultsOf(asked, events);
  if (faults.length > 0) return fail(...faults);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Dryflat//Pace//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => linesOf(asked, event)),
    'END:VCALENDAR',
  ];
  return ok(lines.map(foldLine).join(''));
};
