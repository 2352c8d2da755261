import { questionsOf, type WantedFit } from '@dryflat/record';
import { SpanChoice, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { setWanted } from './change-wearer.ts';
import { mayGoAroundAt } from './may-go-around.ts';

/** Flat or around, for a finished size of something that goes around. */
export const WishSpan = ({ wish }: { wish: Extract<WantedFit, { kind: 'finished' }> }) => {
  const { record, change } = useGarment();
  const { sentence } = useLengths();
  if (!mayGoAroundAt(record, wish.landmark)) return null;
  const at = record.wearer.wanted.findIndex(({ landmark }) => landmark === wish.landmark);
  const asked = questionsOf(record).find(({ field }) => field === `wearer.wanted[${at}].span`);
  return (
    <SpanChoice
      label="How is that measured?"
      value={wish.span}
      onChange={(span) => change((draft) => setWanted(draft, wish.landmark, { ...wish, span }))}
      flatMeans={asked && sentence(asked.flat.sentence)}
      aroundMeans={asked && sentence(asked.around.sentence)}
      hint={asked && sentence(asked.why)}
    />
  );
};
