import { type Advice, type BestOnNeedle, sizeWords } from '@dryflat/engine/garment';
import { wholePercent } from '@dryflat/engine/stats';
import { chancePercent } from '../result/chance-words.ts';

const SAYS: Readonly<Record<Advice['needle'], string>> = {
  larger: 'Needle: one size larger would help. Swatch on it before you begin.',
  smaller: 'Needle: one size smaller would help. Swatch on it before you begin.',
  keep: 'Needle: keep it.',
  'no-evidence':
    'Needle: nothing can be said before something is measured. Swatch on the needle that the pattern names.',
};

const WAYS: Readonly<Record<BestOnNeedle['way'], string>> = {
  smaller: 'one size smaller',
  own: 'on this one',
  larger: 'one size larger',
};

const figure = ({ way, size, chanceAll }: BestOnNeedle, one: boolean): string =>
  `${chancePercent(chanceAll)} ${WAYS[way]}${one ? '' : ` (${sizeWords(size)})`}`;

/** Which needle would help, with the chances that say so: those of the table of sizes and needles. */
export const needleWords = ({ needle, needles }: Advice, sizes: number): string => {
  if (needle === 'no-evidence' || needles.length < 2) return SAYS[needle];
  const all = [...needles].sort((a, b) => Number(b.way === 'own') - Number(a.way === 'own'));
  return `${SAYS[needle]} Begun afresh, the best chance that all fits is ${all.map((each) => figure(each, sizes === 1)).join(', ')}.`;
};

/** Whether nothing on another needle is shown with more than on this one. */
export const isBestKept = ({ needle, needles }: Advice): boolean => {
  const shown = needles.map(({ chanceAll }) => wholePercent(chanceAll));
  const own = needles.findIndex(({ way }) => way === 'own');
  return needle === 'keep' && shown.every((each) => each <= (shown[own] ?? 0));
};
