import { fail, ok, type Result } from '../units/index.ts';
import { escapeText, foldLine, utcStamp } from './calendar-text.ts';
import { dryFault } from './dry-fault.ts';
import type { ClockMark } from './types.ts';

export interface CalendarAsked {
  /** Names the drying for good, so that a newer file replaces the events of an older: letters, digits, hyphens. */
  readonly id: string;
  /** What the knitter calls the garment. */
  readonly garment: string;
  /** When the mass after pressing was taken, and the time now: milliseconds since 1970, UTC. */
  readonly startMs: number;
  readonly nowMs: number;
  /** Rises with each file of the same drying: the number of weighings does. */
  readonly revision: number;
  readonly marks: readonly ClockMark[];
}

const TITLES: Readonly<Record<ClockMark['id'], (garment: string) => string>> = {
  'first-look': (garment) => `Weigh ${garment}`,
  turn: (garment) => `Turn ${garment}`,
  'may-be-dry': (garment) => `${garment} may be dry: look`,
  'look-again': (garment) => `Look at ${garment} again`,
  dry: (garment) => `${garment} is as likely dry as not: weigh it`,
};

const HOUR = 3_600_000;
const MINUTES = 15;

const event = (asked: CalendarAsked, mark: ClockMark): string[] => {
  const title = escapeText(TITLES[mark.id](asked.garment));
  return [
    'BEGIN:VEVENT',
    `UID:${asked.id}-${mark.id}@dryflat.invalid`,
    `DTSTAMP:${utcStamp(asked.nowMs)}`,
    `SEQUENCE:${asked.revision}`,
    `DTSTART:${utcStamp(asked.startMs + mark.hours * HOUR)}`,
    `DURATION:PT${MINUTES}M`,
    `SUMMARY:${title}`,
    `DESCRIPTION:${escapeText(mark.text)}`,
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'TRIGGER:PT0S',
    `DESCRIPTION:${title}`,
    'END:VALARM',
    'END:VEVENT',
  ];
};

/** Milliseconds of the years 2000 to 2200: beyond, a clock is wrong. */
const [EARLIEST, LATEST] = [946_684_800_000, 7_258_118_400_000];
const isTime = (ms: number): boolean => ms >= EARLIEST && ms <= LATEST;

const faultsOf = ({ id, startMs, nowMs, marks }: CalendarAsked) => [
  ...(
    [
      ['startMs', startMs],
      ['nowMs', nowMs],
    ] as const
  )
    .filter(([, ms]) => !isTime(ms))
    .map(([field, ms]) =>
      dryFault(
        'time',
        field,
        ms,
        'this is no time of day in this age',
        'Set the clock, and begin again.',
      ),
    ),
  ...(/^[A-Za-z0-9-]+$/.test(id)
    ? []
    : [
        dryFault(
          'id',
          'id',
          id,
          'an event cannot be named like this',
          'Use letters, digits and hyphens.',
        ),
      ]),
  ...(marks.length > 0
    ? []
    : [
        dryFault(
          'no-marks',
          'marks',
          '',
          'there is nothing left to be reminded of',
          'Make the file before it is dry.',
        ),
      ]),
];

/**
 * A calendar file (iCalendar, RFC 5545) with one event and alarm per mark, in UTC. A calendar that
 * has the events of an earlier file moves them: UIDs stay, SEQUENCE rises. Times that no clock
 * shows, a name that no UID can carry, and no marks at all, are faults. Pure: the time is handed in.
 */
export const dryingCalendar = (asked: CalendarAsked): Result<string> => {
  const faults = faultsOf(asked);
  if (faults.length > 0) return fail(...faults);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Dryflat//Drying clock//EN',
    'CALSCALE:GREGORIAN',
    ...asked.marks.flatMap((mark) => event(asked, mark)),
    'END:VCALENDAR',
  ];
  return ok(lines.map(foldLine).join(''));
};
