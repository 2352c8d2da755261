import { percentText } from '../../stats/index.ts';
import { type Draft, mmToken, spoken } from '../open/draft.ts';
import type { Route, RouteFit } from '../types.ts';

const missWords = ({ miss: { side, byMm } }: RouteFit): string =>
  byMm > 1 ? `likely ${mmToken(byMm)} too ${side}` : `too ${side} where it misses`;

const place = (fit: RouteFit): string =>
  `the ${spoken(fit.landmark)}, ${percentText(fit.chance)}, ${missWords(fit)}`;

/** Places that are named beside the worst, at most. */
const MOST_NAMED = 3;

/** Those beside the worst that are likelier to miss than not. */
const alsoMissing = (fit: readonly RouteFit[], worst: RouteFit): string[] => {
  const all = fit
    .filter((each) => each !== worst && each.chance < 0.5)
    .sort((a, b) => a.chance - b.chance);
  const more = all.length - MOST_NAMED;
  return [
    ...all.slice(0, MOST_NAMED).map(place),
    ...(more > 0 ? [`${more} more ${more === 1 ? 'misses' : 'miss'} likelier than not`] : []),
  ];
};

const fitReason = ({ fit, worst, chanceAllFit }: Omit<Route, 'reasons'>): string[] => {
  if (worst === null || chanceAllFit === null) return [];
  if (worst.chance > 0.99) return ['Everything that is wanted comes out in range.'];
  const least = [`least sure is ${place(worst)}`, ...alsoMissing(fit, worst)].join('; ');
  return [`All of it is in range with ${percentText(chanceAllFit)}; ${least}.`];
};

const yarnReason = ({ chanceOfYarn }: Pick<Route, 'chanceOfYarn'>): string[] =>
  chanceOfYarn === null || chanceOfYarn >= 0.95
    ? []
    : [`The yarn at hand lasts with ${percentText(chanceOfYarn)}.`];

const dateReason = ({ chanceByDate }: Pick<Route, 'chanceByDate'>): string[] =>
  chanceByDate === null || chanceByDate >= 0.9
    ? []
    : [`It is done by the date with ${percentText(chanceByDate)}.`];

/** What speaks for and against it: fit first, then what is its own, then yarn and date where they are short. */
export const reasonsOf = (figures: Omit<Route, 'reasons'>, draft: Draft): string[] => [
  ...fitReason(figures),
  ...(draft.reasons ?? []).filter((each) => each !== ''),
  ...yarnReason(figures),
  ...dateReason(figures),
];
