import type { ForecastQuestion, Notice } from './forecast-types.ts';

/** Where a piece that is there has other stitches than the pattern, that is said: it may be of another place. */
export const pieceCountNotices = ({ measurements }: ForecastQuestion): Notice[] =>
  measurements.flatMap(({ name, span, knit }) =>
    knit === undefined
      ? []
      : [
          {
            code: 'counted-on-piece',
            text: `${name}: ${knit.piece} has ${knit.across} stitches across, so ${knit.stitches}${span === 'around' ? ' all the way around' : ''} are foretold, the rest taken to be alike. If they were counted at another place, say which.`,
          },
        ],
  );
