import type { Pitch } from '@dryflat/engine/counts';
import { Card, Disclosure, useWords } from '../../kit/index.ts';
import { ButtonholesSum } from './buttonholes-sum.tsx';
import { EvenSum } from './even-sum.tsx';
import { PickUpSum } from './pick-up-sum.tsx';
import { ShortRowsSum } from './short-rows-sum.tsx';

/** Small sums that come up with the needles in hand; what is typed stays on this device. */
export const SumsCard = ({ pitch }: { pitch: Pitch }) => {
  const word = useWords();
  return (
    <Card title="Small sums">
      <p className="df-soft">
        At the {word('gauge')} chosen above. Nothing here changes the garment.
      </p>
      <Disclosure title="Increase or decrease evenly">
        <EvenSum />
      </Disclosure>
      <Disclosure title="Pick up along an edge">
        <PickUpSum pitch={pitch} />
      </Disclosure>
      <Disclosure title="Buttonholes in a band">
        <ButtonholesSum pitch={pitch} />
      </Disclosure>
      <Disclosure title="Short rows">
        <ShortRowsSum pitch={pitch} />
      </Disclosure>
    </Card>
  );
};
