import { percentText } from '../../stats/index.ts';
import type { Route, RouteWeights } from '../types.ts';

const PARTS = ['fit', 'time', 'yarn'] as const;
type Part = (typeof PARTS)[number];

/** As it is printed: differences that do not show are none. */
const hours = ({ hours: { total } }: Route): string => {
  const value = total.p50;
  if (value < 0.25) return 'no work';
  return value < 9.75 ? `${Math.round(value * 2) / 2} hours` : `${Math.round(value)} hours`;
};

const yarn = ({ yarnM: { needed } }: Route): string =>
  needed.p50 < 0.5 ? 'no yarn' : `${Math.round(needed.p50)} m of yarn`;

const fits = ({ chanceAllFit }: Route): string => percentText(chanceAllFit ?? 0);

const inTime = ({ chanceByDate }: Route): string =>
  chanceByDate === null ? '' : percentText(chanceByDate);

const time = (route: Route): string =>
  route.chanceByDate === null
    ? hours(route)
    : `${hours(route)}, the date met with ${inTime(route)}`;

const VALUE: Readonly<Record<Part, (route: Route) => string>> = { fit: fits, time, yarn };
const SAYS: Readonly<Record<Part, string>> = {
  fit: 'all of it fits with',
  time: 'it takes',
  yarn: 'it takes',
};

/** What one part has against the other route; null where both print the same. */
const said = (part: Part, first: Route, next: Route): string | null => {
  const [here, there] = [VALUE[part](first), VALUE[part](next)];
  return here === there ? null : `${SAYS[part]} ${here} (there ${there})`;
};

/** A lead in worth that is not told: half a point in a hundred. */
const UNTOLD = 5e-3;

interface Lead {
  readonly by: number;
  readonly words: string;
}

/** The parts that show a difference, the largest lead of the first over the next before the others. */
const leads = (first: Route, next: Route, weights: RouteWeights): Lead[] =>
  PARTS.flatMap((part) => {
    const words = said(part, first, next);
    const by = weights[part] * (first.worth[part] - next.worth[part]);
    return words === null || Math.abs(by) < UNTOLD ? [] : [{ by, words }];
  }).sort((a, b) => b.by - a.by);

const against = (first: Route, next: Route, weights: RouteWeights): string => {
  const all = leads(first, next, weights);
  const [most] = all;
  const least = all.at(-1);
  if (most === undefined || most.by < 0) return `“${next.name}” is hardly behind it.`;
  const cost = least !== undefined && least.by < 0 ? `; what it costs: ${least.words}` : '';
  return `Against “${next.name}”, ${most.words}${cost}.`;
};

/** What it gains over the plan, where the plan is neither of the first two. */
const overPlan = (routes: readonly Route[]): string => {
  const [first, next] = routes;
  const plan = routes.find(({ planned }) => planned);
  if (first === undefined || plan === undefined || plan === first || plan === next) return '';
  const words = said('fit', first, plan);
  return words === null ? '' : ` As planned, all of it fits with ${fits(plan)}.`;
};

const number = (weight: number): string => `${Math.round(weight * 100) / 100}`;
const weighed = ({ fit, time: hasten, yarn: spare }: RouteWeights): string =>
  `with fit weighed ${number(fit)}, time ${number(hasten)} and yarn ${number(spare)}`;

/** Why the first is first: what makes most of its lead over the second, what speaks against it most, and the plan. */
export const whyFirst = (routes: readonly Route[], weights: RouteWeights): string => {
  const [first, next] = routes;
  if (first === undefined) return 'No route was worked out.';
  if (next === undefined) return `“${first.name}” is the only route.`;
  return `“${first.name}” comes first, ${weighed(weights)}. ${against(first, next, weights)}${overPlan(routes)}`;
};
