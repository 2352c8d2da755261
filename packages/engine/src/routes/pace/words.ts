import { MOST_SHORT } from '../../fabric/index.ts';
import { wholePercent } from '../../stats/index.ts';
import { restCaution } from './rest.ts';
import type { CriticalStep, DateAdvice, PaceForecast, PaceQuestion, YarnAdvice } from './types.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `9 April 2031`, from an ISO day. */
export const dayInWords = (iso: string): string => {
  const [year, month, day] = iso.split('-').map(Number);
  return `${day} ${MONTHS[month! - 1]} ${year}`;
};

const percent = (chance: number): string => {
  const whole = wholePercent(chance);
  if (whole === 0) return 'less than 1 %';
  return whole === 100 ? 'more than 99 %' : `${whole} %`;
};

const NEVER = 'With these hours it is more likely than not that it takes over three years.';

const dateWords = (date: DateAdvice | null): string =>
  date === null
    ? ''
    : ` The chance of being done by ${dayInWords(date.by)} is ${percent(date.chance)}.`;

const criticalWords = ([first]: readonly CriticalStep[]): string =>
  first === undefined ? '' : ` The most days go to ${first.name}.`;

/** When it is done, with what chance it meets its date, and what takes longest. */
export const sentenceOf = (
  { p05, p50, p95 }: PaceForecast['done'],
  date: DateAdvice | null,
  critical: readonly CriticalStep[],
): string => {
  if (p50 === null || p05 === null) return `${NEVER}${dateWords(date)}`;
  const late = p95 === null ? 'later than three years on' : dayInWords(p95);
  const range = p05 === p95 ? '' : `, and nine times in ten between ${dayInWords(p05)} and ${late}`;
  return `It is as likely as not done by ${dayInWords(p50)}${range}.${dateWords(date)}${criticalWords(critical)}`;
};

type Notice = PaceForecast['notices'][number];

const noticeIf = (holds: boolean, code: string, text: string): Notice[] =>
  holds ? [{ code, text }] : [];

const orderWords = (yarn: YarnAdvice | null): Notice[] => {
  if (yarn === null || yarn.lastOrderDay === null) return [];
  return yarn.tooLate
    ? [
        {
          code: 'order-too-late',
          text: 'Yarn may run out before another skein can be here: ask for one now.',
        },
      ]
    : [
        {
          code: 'order-by',
          text: `If another skein is wanted, ask for it by ${dayInWords(yarn.lastOrderDay)}.`,
        },
      ];
};

export const noticesOf = (
  question: PaceQuestion,
  never: number,
  yarn: YarnAdvice | null,
  date: DateAdvice | null,
): Notice[] => {
  const { hours, by, from, log } = question;
  const caution = restCaution([...hours, ...(date?.hours ?? [])]);
  return [
    ...noticeIf(
      log.length === 0,
      'no-pace',
      'No knitting was timed, so the pace may be anything that is usual. Time one row, and this gets much surer.',
    ),
    ...noticeIf(
      hours.every((each) => each === 0),
      'no-hours',
      'No day has hours for knitting.',
    ),
    ...noticeIf(by !== null && by < from, 'past-date', 'The wanted day is before the first day.'),
    ...noticeIf(
      never > 0.005,
      'never',
      `The chance that it takes over three years is ${percent(never)}.`,
    ),
    ...noticeIf(
      yarn !== null && yarn.chanceShort >= MOST_SHORT,
      'yarn-short',
      `The chance that the yarn at hand runs out before it is done is ${percent(yarn?.chanceShort ?? 0)}.`,
    ),
    ...orderWords(yarn),
    ...noticeIf(caution !== null, 'rest', caution ?? ''),
  ];
};
