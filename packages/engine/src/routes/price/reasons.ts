import { percentText } from '../../stats/index.ts';
import { type Draft, mmToken, spoken } from '../open/draft.ts';
import type { Route, RouteFit } from '../types.ts';

const missWords = ({ miss: { side, byMm } }: RouteFit): string =>
  byMm > 1 ? `likely ${mmToken(byMm)} too ${side}` : `too ${side} where it misses`;

const fitReason = ({ worst, chanceAllFit }: Pick<Route, 'worst' | 'chanceAllFit'>): string[] => {
  if (worst === null || chanceAllFit === null) return [];
  if (worst.chance > 0.99) return ['Everything that is wanted comes out in range.'];
  return [
    `All of it is in range with ${percentText(chanceAllFit)}; least sure is the ${spoken(worst.landmark)}, ${percentText(worst.chance)}, ${missWords(worst)}.`,
  ];
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
