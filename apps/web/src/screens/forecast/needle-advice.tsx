import type { Forecast } from '@dryflat/engine/garment';
import { Notice } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { isBestKept, needleWords } from './needle-words.ts';

/** Which needle would help; on its own where no sizes can be compared. */
export const NeedleAdvice = ({
  forecast: { advice },
  alone = false,
}: {
  forecast: Forecast;
  alone?: boolean;
}) => {
  const { own } = useSentences();
  const { record } = useGarment();
  if (alone && advice.needle === 'no-evidence') return null;
  return (
    <Notice tone={isBestKept(advice) ? 'good' : 'plain'}>
      {own(needleWords(advice, record.pattern.sizes.length))}
    </Notice>
  );
};
