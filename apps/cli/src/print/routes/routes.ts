import type { Route } from '@dryflat/engine/routes';
import type { Spread } from '@dryflat/engine/stats';
import type { ToldRoutes } from '../../commands/told-routes.ts';
import { chanceText } from '../chance.ts';
import type { Reporting } from '../report.ts';
import { hanging, padEnd, padStart } from '../text.ts';

const orNone = (chance: number | null): string => (chance === null ? '–' : chanceText(chance));
const whole = (value: number): string => `${Math.round(value) + 0}`;
/** Hours below ten to a half. */
const hours = (value: number): string =>
  value < 9.75 ? `${Math.round(value * 2) / 2}` : whole(value);

const ranged = ({ p5, p50, p95 }: Spread, say: (value: number) => string): string =>
  say(p5) === say(p95) ? say(p50) : `${say(p50)} (${say(p5)}–${say(p95)})`;

const WIDTHS = [12, 16, 20, 13] as const;
const INDENT = '     ';

const row = (cells: readonly string[]): string =>
  `${INDENT}${cells.map((cell, k) => padEnd(cell, WIDTHS[k] ?? 0)).join('')}`;

const figures = (route: Route): string =>
  row([
    orNone(route.chanceAllFit),
    ranged(route.hours.total, hours),
    ranged(route.yarnM.needed, whole),
    orNone(route.chanceOfYarn),
    route.chanceByDate === null ? '' : chanceText(route.chanceByDate),
  ]);

const mark = ({ dominatedBy }: Route, all: readonly Route[]): string => {
  const at = all.findIndex(({ id }) => id === dominatedBy);
  return at < 0 ? '' : `${INDENT}in nothing better than ${at + 1}`;
};

const nameOf = (route: Route, say: (text: string) => string): string =>
  `${say(route.name)}${route.planned ? ' (your plan)' : ''}`;

/** Every route with its figures beneath it, best first. */
export const routeLines = (
  { result: { routes }, question }: ToldRoutes,
  say: (text: string) => string,
  { style }: Reporting,
): string[] => [
  style.quiet(
    row([
      'all fits',
      'hours',
      'yarn, m',
      'it lasts',
      question.by === null ? '' : `by ${question.by}`,
    ]),
  ),
  ...routes.flatMap((route, k) => [
    ...hanging(`${padStart(`${k + 1}`, 3)}  `, nameOf(route, say)).map(style.strong),
    figures(route),
    ...[mark(route, routes)].filter((line) => line !== '').map(style.quiet),
  ]),
];

const spoken = (count: Route['counts']): string =>
  count.map(({ what, count: n }) => `${what} ${n}`).join(', ');

/** What the first few ask to do, step by step, and what speaks for and against them. */
export const reasonLines = (
  routes: readonly Route[],
  say: (text: string) => string,
  { style }: Reporting,
): string[] => [
  style.heading(`The first ${routes.length === 1 ? 'one' : routes.length} in full`),
  ...routes.flatMap((route, k) => [
    ...hanging(`${padStart(`${k + 1}`, 3)}  `, route.reasons.map(say).join(' ')),
    ...route.steps.flatMap((step) => hanging(`${INDENT}- `, say(step))),
    ...(route.counts.length === 0 ? [] : hanging(INDENT, `Counts: ${spoken(route.counts)}.`)),
  ]),
];
