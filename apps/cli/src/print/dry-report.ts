import type { ClockMark, DryingForecast, Spread } from '@dryflat/engine/drying';
import type { ToldDrying } from '../commands/told-drying.ts';
import { hoursAfter } from './moments.ts';
import type { Style } from './style.ts';
import { hanging, padEnd } from './text.ts';

const MARKS: Readonly<Record<ClockMark['kind'], string>> = {
  look: 'look',
  turn: 'turn',
  dry: 'dry',
};

const hours = (value: number): string => value.toFixed(1);
const grams = (value: number): string => `${value.toFixed(0)} g`;
const span = ({ p5, p95 }: Spread, print: (value: number) => string): string =>
  `${print(p5)} to ${print(p95)}`;

/** Never none and never all, which nobody knows. */
const chanceText = (chance: number): string => {
  if (chance < 0.01) return 'less than 1 in 100';
  return chance > 0.99 ? 'more than 99 in 100' : `${Math.round(100 * chance)} in 100`;
};

const answer = ({ drying: { begun }, forecast }: ToldDrying): string[] => {
  const { dryHours, dryAtG, waterG, rateG } = forecast;
  const at = (value: number): string => hoursAfter(begun, value);
  return [
    `Laid out  ${at(0)}`,
    `Dry       between ${at(dryHours.p5)} and ${at(dryHours.p95)}`,
    `          ${span(dryHours, hours)} hours after it was laid out, likeliest ${hours(dryHours.p50)}`,
    `On scale  ${grams(dryAtG)} or less`,
    `Water     ${span(waterG, grams)} to lose, ${span(rateG, grams)} an hour while all is wet`,
  ];
};

const now = ({ drying, forecast }: ToldDrying): string[] => {
  if (forecast.now === null) return [];
  const { hours: at, chance, text } = forecast.now;
  return hanging(
    `${hoursAfter(drying.begun, at)}  `,
    `${text} Chance that it is dry: ${chanceText(chance)}.`,
  );
};

const markLines = ({ drying: { begun }, forecast }: ToldDrying): string[] =>
  forecast.marks.flatMap(({ kind, hours: at, text }) =>
    hanging(`${hoursAfter(begun, at)}  ${padEnd(MARKS[kind], 6)}`, text),
  );

const placeLines = ({ drying: { begun }, forecast }: ToldDrying): string[] =>
  forecast.places.flatMap(({ name, share, dryHours: { p5, p95 } }) =>
    hanging(
      '  - ',
      `${name}, ${Math.round(100 * share)} % of it: ${hoursAfter(begun, p5)} to ${hoursAfter(begun, p95)}`,
    ),
  );

const basisLines = ({ bases }: DryingForecast): string[] =>
  bases.flatMap(({ what, source, standing }) =>
    hanging('  - ', `${what}: ${standing}${source === null ? '' : ` (${source})`}`),
  );

const block = (heading: string, lines: readonly string[], style: Style): string[] =>
  lines.length === 0 ? [] : ['', style.heading(heading), ...lines];

/** The drying as a list within 80 columns; times are universal, so that they are the same everywhere. */
export const dryReport = (told: ToldDrying, style: Style): string => {
  const { record, forecast } = told;
  const lines = [
    style.strong(record.name),
    'Times are universal time (UTC). Ranges hold nine times in ten.',
    '',
    ...answer(told),
    ...block('At the last weighing', now(told), style),
    ...block('When to look', markLines(told), style),
    ...block('Places', placeLines(told), style),
    ...block('By touch', hanging('  - ', forecast.touch.text), style),
    ...block(
      'What you should know',
      forecast.notices.flatMap(({ text }) => hanging('  - ', text)),
      style,
    ),
    ...block('What it stands on', basisLines(forecast), style),
  ];
  return `${lines.join('\n')}\n`;
};
