import type { Measuring, RoutesResult } from '@dryflat/engine/routes';
import type { ToldRoutes } from '../../commands/told-routes.ts';
import { inUnits } from '../../faults.ts';
import type { Reporting } from '../report.ts';
import { hanging } from '../text.ts';
import { inWords } from '../words.ts';
import { reasonLines, routeLines } from './routes.ts';
import { sizeLines } from './sizes.ts';

const ONE_OF_MANY = 3;

const title = ({ record, result }: ToldRoutes, { style }: Reporting): string[] => [
  style.strong(`${record.name}: what to do now`),
  ...hanging(
    '',
    `Each way out on the same draws of garment, hands and yarn; fit is judged ${result.judgedAt}. In brackets the range that should hold nine times in ten.`,
  ).map(style.quiet),
];

/** Gains below a thousandth of the score are no reason to measure. */
const LEAST_GAIN = 0.001;

const measuringLines = (
  measurings: readonly Measuring[],
  say: (text: string) => string,
  { style }: Reporting,
): string[] => {
  const worth = measurings.filter(({ gain }) => gain >= LEAST_GAIN);
  const heading = style.heading('Worth measuring first');
  if (worth.length === 0)
    return [
      heading,
      ...hanging('  ', 'No single cheap measurement is likely to change the choice.'),
    ];
  return [
    heading,
    ...worth
      .slice(0, ONE_OF_MANY)
      .flatMap(({ name, gain, chanceOfChange }) =>
        hanging(
          '  - ',
          `${say(name)}: ${Math.round(chanceOfChange * 100)} % that another way turns out better; ${(gain * 100).toFixed(1)} points more of what a route can be worth.`,
        ),
      ),
  ];
};

/** Those that are not open for the same reason stand together. */
const leftOutLines = (
  { leftOut }: RoutesResult,
  say: (text: string) => string,
  { style }: Reporting,
): string[] => {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  const named = (why: string): string =>
    leftOut
      .filter((each) => each.why === why)
      .map(({ name }) => say(name))
      .join('; ');
  return reasons.length === 0
    ? []
    : [
        style.heading('Not open'),
        ...reasons.flatMap((why) => hanging('  - ', `${named(why)}: ${say(why)}`)),
      ];
};

const noticeLines = (
  { result, notices }: ToldRoutes,
  say: (text: string) => string,
  { units, style }: Reporting,
): string[] => {
  const all = [
    ...result.notices.map(({ text }) => say(text)),
    ...notices.map((t) => inUnits(t, units)),
  ];
  return all.length === 0
    ? []
    : [style.warning('To know'), ...all.flatMap((text) => hanging('  - ', text))];
};

const standing = ({ result: { bases } }: ToldRoutes): string => {
  const measured = bases.filter(({ kind }) => kind === 'measured').length;
  return `Stands on ${measured} measured and ${bases.length - measured} other inputs; --json lists them.`;
};

/** Every way out for a reader at a terminal: all at a glance, then why, what to measure, and what is not open. */
export const routesReport = (told: ToldRoutes, reporting: Reporting): string => {
  const { units, words, style } = reporting;
  const { result } = told;
  const say = (text: string): string => inWords(inUnits(text, units), words);
  const blocks = [
    title(told, reporting),
    routeLines(told, say, reporting),
    hanging('', say(result.sentence)),
    reasonLines(result.routes.slice(0, ONE_OF_MANY), say, reporting),
    measuringLines(result.valueOfInformation, say, reporting),
    sizeLines(told, reporting),
    leftOutLines(result, say, reporting),
    noticeLines(told, say, reporting),
    [
      style.quiet(standing(told)),
      style.quiet(
        `${result.draws} draws from seed ${result.seed}: the same file, day and seed give the same bytes.`,
      ),
    ],
  ];
  const text = blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map((line) => line.trimEnd()).join('\n'))
    .join('\n\n');
  return `${text.replaceAll('\u00a0', ' ')}\n`;
};
