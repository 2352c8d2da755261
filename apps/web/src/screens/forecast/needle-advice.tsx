import type { NeedleAdvice as Needle } from '@dryflat/engine/garment';
import { Notice } from '../../kit/index.ts';
import { useSentences } from '../result/craft-sentence.ts';

const SAYS: Readonly<Record<Needle, string>> = {
  larger: 'Needle: one size larger would help. Swatch on it before you begin.',
  smaller: 'Needle: one size smaller would help. Swatch on it before you begin.',
  keep: 'Needle: keep it. One size up or down would not make a better fit.',
  'no-evidence':
    'Needle: nothing can be said before something is measured. Swatch on the needle that the pattern names.',
};

/** Which needle would help; on its own where no sizes can be compared. */
export const NeedleAdvice = ({ needle, alone = false }: { needle: Needle; alone?: boolean }) => {
  const { own } = useSentences();
  if (alone && needle === 'no-evidence') return null;
  return <Notice tone={needle === 'keep' ? 'good' : 'plain'}>{own(SAYS[needle])}</Notice>;
};
