import type { ForecastQuestion } from './forecast-types.ts';

/** States in which fit is judged, in the order of a garment's life. */
const ORDER = ['dried', 'worn', 'rewashed'] as const;

/**
 * The question judged no earlier than the garment was measured: how it fitted before its last wash is history.
 * Where it was not measured that far, it is judged where the plan says.
 */
export const atLatest = (question: ForecastQuestion): ForecastQuestion => {
  const { judgeAt, measured } = question;
  const latest = ORDER.findLast((state) => measured.some((tape) => tape.state === state));
  return latest !== undefined && ORDER.indexOf(latest) > ORDER.indexOf(judgeAt)
    ? { ...question, judgeAt: latest }
    : question;
};
