import type { Bench } from './open/draft.ts';
import { spoken } from './open/draft.ts';
import type { Route, RoutesQuestion, RoutesResult } from './types.ts';

type Notice = RoutesResult['notices'][number];

const noticeIf = (holds: boolean, code: string, text: string): Notice[] =>
  holds ? [{ code, text }] : [];

/** What the reader should know of the comparison as a whole. */
export const noticesOf = (
  question: RoutesQuestion,
  bench: Bench,
  found: readonly Route[],
): Notice[] => {
  const { pace, stock, by, from } = question;
  const unknown = bench.own.unknown.map(spoken).join(', ');
  return [
    ...noticeIf(
      bench.own.targets.length === 0,
      'nothing-wanted',
      'Nothing is wanted of the fit yet, so routes are compared by time and yarn alone: say which ease or finished measurement is wanted.',
    ),
    ...noticeIf(
      unknown !== '',
      'not-judged',
      `Wanted, but not judged for want of a measurement: ${unknown}.`,
    ),
    ...noticeIf(
      pace.log.length === 0,
      'no-pace',
      'No knitting was timed: hours stand on a usual pace of 15 to 40 stitches a minute.',
    ),
    ...noticeIf(
      pace.hours.every((each) => each === 0),
      'no-hours',
      'No day has hours for knitting, so nothing is ever done.',
    ),
    ...noticeIf(
      stock === null,
      'no-stock',
      'How much yarn there is is not known, so whether it lasts is not said.',
    ),
    ...noticeIf(by !== null && by < from, 'past-date', 'The wanted day is before the first day.'),
    ...noticeIf(
      found.some(({ kind }) => kind === 'harder' || kind === 'schematic'),
      'block-not-permanent',
      'What pinning gains, the next soak gives back in part or in whole: compare dried with rewashed.',
    ),
  ];
};
