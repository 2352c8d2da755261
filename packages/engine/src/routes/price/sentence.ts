import { percent } from '../open/draft.ts';
import type { Route, RouteWeights } from '../types.ts';

const PARTS = ['fit', 'time', 'yarn'] as const;
type Part = (typeof PARTS)[number];

const hours = ({ hours: { total } }: Route): string => {
  const value = total.p50;
  return value < 10 ? `${value.toFixed(1)} hours` : `${Math.round(value)} hours`;
};

const yarn = ({ yarnM }: Route): string => `${Math.round(yarnM.needed.p50)} m of yarn`;

const SAY: Readonly<Record<Part, (first: Route, next: Route) => string>> = {
  fit: (first, next) =>
    `all of it fits with ${percent(first.chanceAllFit ?? 0)}, there with ${percent(next.chanceAllFit ?? 0)}`,
  time: (first, next) =>
    first.chanceByDate !== null &&
    next.chanceByDate !== null &&
    first.chanceByDate !== next.chanceByDate
      ? `it is done by the date with ${percent(first.chanceByDate)} in ${hours(first)}, there with ${percent(next.chanceByDate)} in ${hours(next)}`
      : `it takes about ${hours(first)}, there ${hours(next)}`,
  yarn: (first, next) => `it takes ${yarn(first)}, there ${yarn(next)}`,
};

/** How much of the lead over the next each part makes, weighted. */
const lead = (part: Part, first: Route, next: Route, weights: RouteWeights): number =>
  weights[part] * (first.worth[part] - next.worth[part]);

const costs = (first: Route, next: Route, weights: RouteWeights): string => {
  const least = PARTS.toSorted(
    (a, b) => lead(a, first, next, weights) - lead(b, first, next, weights),
  )[0]!;
  return lead(least, first, next, weights) >= -1e-3
    ? ''
    : `; against it, ${SAY[least](first, next)}`;
};

/** Why the first is first: what makes most of its lead over the second, and what speaks against it most. */
export const whyFirst = (routes: readonly Route[], weights: RouteWeights): string => {
  const [first, next] = routes;
  if (first === undefined) return 'No route was worked out.';
  if (next === undefined) return `“${first.name}” is the only route.`;
  const most = PARTS.toSorted(
    (a, b) => lead(b, first, next, weights) - lead(a, first, next, weights),
  )[0]!;
  const start = `“${first.name}” comes first by your weights. Against “${next.name}”`;
  return lead(most, first, next, weights) < 1e-9
    ? `${start} it is no better and no worse.`
    : `${start}, ${SAY[most](first, next)}${costs(first, next, weights)}.`;
};
