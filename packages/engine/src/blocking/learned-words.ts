import { Z95 } from '../stats/index.ts';
import type { LearnedChange, LearnedWhat } from './mat-types.ts';
import type { MeanSd } from './types.ts';

/** What a factor above and below 1 means. */
const WORDS: Readonly<Record<LearnedWhat, readonly [subject: string, more: string, less: string]>> =
  {
    stiffness: ['The wet fabric is', 'stiffer', 'softer'],
    'rest-width': ['Unpinned, it lies', 'wider', 'narrower'],
    'rest-length': ['Unpinned, it lies', 'longer', 'shorter'],
    'draw-in': ['Pulled one way, across it draws in by', 'more', 'less'],
  };

const UNTOLD: Readonly<Record<LearnedWhat, string>> = {
  stiffness: 'how stiff it is',
  'rest-width': 'how wide it lies unpinned',
  'rest-length': 'how long it lies unpinned',
  'draw-in': 'how far it draws in across a pull',
};

/** A doubt that shrank by less than this share was told nothing worth a sentence. */
const TOLD = 0.03;

const percent = (log: number): string => {
  const share = 100 * Math.abs(Math.expm1(log));
  return share < 10 ? share.toFixed(1) : share.toFixed(0);
};

const signed = (log: number): string => `${log < 0 ? '−' : '+'}${percent(log)}`;

/** Whether the readings say anything of it. */
export const isTold = (before: MeanSd, after: MeanSd): boolean =>
  after.sd < (1 - TOLD) * before.sd || Math.abs(after.mean - before.mean) > 0.2 * before.sd;

/** The change of one unknown with its sentence: the middle, and the range that holds it 9 times in 10. */
export const learnedChange = (what: LearnedWhat, before: MeanSd, after: MeanSd): LearnedChange => {
  if (!isTold(before, after))
    return { what, before, after, text: `Nothing new on ${UNTOLD[what]}.` };
  const [subject, more, less] = WORDS[what];
  const reach = Z95 * after.sd;
  const range = `${signed(after.mean - reach)} % to ${signed(after.mean + reach)} %`;
  const text = `${subject} ${percent(after.mean)} % ${after.mean < 0 ? less : more} than was thought (${range}).`;
  return { what, before, after, text };
};
