import type { Route } from '../types.ts';
import type { Priced } from './price.ts';

/** Middle chance of the landmarks, to tell apart routes that are all but hopeless. */
const meanChance = ({ fit }: Route): number =>
  fit.length === 0 ? 0 : fit.reduce((sum, { chance }) => sum + chance, 0) / fit.length;

/** Best first: by score, then fit of each landmark, then hours; at last by id, so that the order is one. */
const before = (a: Route, b: Route): number =>
  b.score - a.score ||
  meanChance(b) - meanChance(a) ||
  a.hours.total.p50 - b.hours.total.p50 ||
  (a.id < b.id ? -1 : 1);

/** What is compared, each the larger the better. */
const merits = (route: Route): number[] => [
  route.chanceAllFit ?? 0,
  route.worth.fit,
  route.worth.time,
  route.worth.yarn,
  -route.hours.total.p50,
  route.chanceByDate ?? 0,
  route.yarnM.returned.p50 - route.yarnM.needed.p50,
  route.chanceOfYarn ?? 0,
];

/** At least as good in all of it, and better in one. Equal within rounding is equal. */
export const dominates = (a: Route, b: Route): boolean => {
  const [ours, theirs] = [merits(a), merits(b)];
  const gap = ours.map((mine, k) => mine - theirs[k]!);
  const slack = (k: number): number => 1e-9 * Math.max(1, Math.abs(ours[k]!));
  return gap.every((g, k) => g >= -slack(k)) && gap.some((g, k) => g > slack(k));
};

/** The best of those that dominate it; null where none does. Routes for different people are not compared. */
const dominator = (route: Route, all: readonly Route[]): string | null =>
  all.find((other) => other.recipient === route.recipient && dominates(other, route))?.id ?? null;

/** Routes in order, those marked that are no better than another in anything. */
export const ordered = (all: readonly Priced[]): Priced[] => {
  const sorted = all.toSorted((a, b) => before(a.route, b.route));
  const routes = sorted.map(({ route }) => route);
  return sorted.map((each) => ({
    ...each,
    route: { ...each.route, dominatedBy: dominator(each.route, routes) },
  }));
};
