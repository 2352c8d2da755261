import type { CriticalStep, Milestone, PaceForecast } from '@dryflat/engine/routes';
import type { Spread } from '@dryflat/engine/stats';
import { inUnits } from '../faults.ts';
import type { ToldPace } from '../json/pace-json.ts';
import { chanceText } from './chance.ts';
import type { Style } from './style.ts';
import { hanging, inCommon, padEnd } from './text.ts';

const hours = (value: number): string =>
  value < 9.75 ? `${Math.round(value * 2) / 2}` : `${Math.round(value)}`;
const ranged = ({ p5, p50, p95 }: Spread): string =>
  `${hours(p50)} h (${hours(p5)} to ${hours(p95)})`;

const LATER = 'later';
const NAME = 26;

const milestone = ({ name, early, middle, late }: Milestone): string =>
  `  ${padEnd(name, NAME)}${[early, middle, late].map((day) => padEnd(day ?? LATER, 14)).join('')}`;

const milestoneLines = ({ milestones }: PaceForecast, style: Style): string[] =>
  milestones.length === 0
    ? []
    : [
        style.heading('Ends'),
        style.quiet(
          `  ${padEnd('', NAME)}${['1 in 20 by', 'as likely', '19 in 20 by'].map((text) => padEnd(text, 14)).join('')}`,
        ),
        ...milestones.map(milestone),
      ];

const gain = ({ name, daysGained, chanceWithout }: CriticalStep): string => {
  const days = `${daysGained.toFixed(1)} days sooner without it`;
  const date = chanceWithout === null ? '' : `, the date then ${chanceText(chanceWithout)}`;
  return `${name}: ${days}${date}`;
};

const criticalLines = ({ critical }: PaceForecast, style: Style): string[] =>
  critical.length === 0
    ? []
    : [
        style.heading('What takes the days'),
        ...critical.flatMap((each) => hanging('  - ', gain(each))),
      ];

const workLines = ({ hours: all, byPart, entries, pace }: PaceForecast, style: Style): string[] => [
  style.heading('Work left'),
  ...hanging(
    '  ',
    `${ranged(all)} in all, at ${Math.round(pace.plain.p5)} to ${Math.round(pace.plain.p95)} stitches a minute ${entries === 0 ? 'as usual; nothing was timed' : `by ${entries} timed sitting${entries === 1 ? '' : 's'}`}.`,
  ),
  ...byPart.map(({ name, hours: each }) => `  ${padEnd(name, NAME)}${ranged(each)}`),
];

const dateLines = ({ date }: PaceForecast): string[] => {
  if (date === null) return [];
  const start =
    date.latestStart === null ? 'no start is early enough' : `start by ${date.latestStart}`;
  const week =
    date.hoursPerWeek === null
      ? 'no hours of a week are enough'
      : `knit ${date.hoursPerWeek.toFixed(1)} hours a week`;
  return hanging(
    '',
    `By ${date.by}: ${chanceText(date.chance)}. For nine times in ten: ${start} with these hours, or ${week}.`,
  );
};

/** Chance of being done in the days that matter: at most so many lines, evenly among them. */
const MOST_DAYS = 8;

const dayLines = ({ days }: PaceForecast, style: Style): string[] => {
  const telling = days.filter(({ cumulative }) => cumulative >= 0.02 && cumulative <= 0.98);
  const step = Math.max(1, Math.ceil(telling.length / MOST_DAYS));
  const shown = telling.filter((_, k) => k % step === 0);
  return shown.length === 0
    ? []
    : [
        style.heading('Chance of being done'),
        ...shown.map(({ day, cumulative }) => `  ${day}  ${chanceText(cumulative)}`),
      ];
};

const listed = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => hanging('  - ', inUnits(text, 'cm')));

const noticeLines = (texts: readonly string[], style: Style): string[] =>
  texts.length === 0 ? [] : [style.warning('To know'), ...listed(texts)];

/** When it is done in each size: the day, the date that is wanted, and the hours that are left. */
const eachSize = (
  told: readonly ToldPace[],
  own: readonly (readonly string[])[],
  style: Style,
): string[][] => [
  [
    style.strong(`${told[0]?.record.name}: from ${told[0]?.question.from} on, no size chosen`),
    ...hanging('', 'Which size? Each as planned; all of one size: add --size.').map(style.quiet),
  ],
  ...told.map(({ record, forecast }, k) => [
    style.heading(`Size ${record.pattern.chosen}`),
    ...hanging('', forecast.sentence),
    ...dateLines(forecast),
    `Work left: ${ranged(forecast.hours)}.`,
    ...listed(own[k] ?? []),
  ]),
];

/** When it is done as planned, for a reader at a terminal; in each size, where it is open. */
export const paceReport = (all: readonly ToldPace[], style: Style): string => {
  const told = all[0]!;
  const { record, question, forecast } = told;
  const one = [
    [style.strong(`${record.name}: from ${question.from} on, as planned`)],
    hanging('', forecast.sentence),
    dateLines(forecast),
    workLines(forecast, style),
    milestoneLines(forecast, style),
    dayLines(forecast, style),
    criticalLines(forecast, style),
  ];
  const { common, own } = inCommon(
    all.map((each) => each.forecast.notices.map(({ text }) => text)),
  );
  const blocks = [
    ...(all.length > 1 ? eachSize(all, own, style) : one),
    noticeLines([...common, ...told.notices], style),
    [
      style.quiet(
        `${forecast.draws} draws from seed ${forecast.seed}: the same file and day give the same bytes.`,
      ),
    ],
  ];
  const text = blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map((line) => line.trimEnd()).join('\n'))
    .join('\n\n');
  return `${text.replaceAll('\u00a0', ' ')}\n`;
};
