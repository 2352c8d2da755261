import type { Fault } from '@dryflat/engine/units';
import { Card, Notice } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { STOPPED } from '../../worker/long-work.ts';
import { MendList } from '../result/mend-list.tsx';

/** What is still missing before anything can be said, each with the way to where it is mended. */
export const NotYet = ({ faults }: { faults: readonly Fault[] }) => {
  const { record } = useGarment();
  return (
    <Card title="No forecast yet">
      <p className="df-lead">
        {faults.length === 1 ? 'One thing stands' : `${faults.length} things stand`} between this
        garment and its forecast.
      </p>
      <MendList id={record.id} faults={faults} />
    </Card>
  );
};

/** In place of an answer: the knitter stopped it, or it failed. */
export const BrokenForecast = ({ message }: { message: string }) =>
  message === STOPPED ? (
    <Notice tone="unsure">
      You stopped it. Change anything, or come back to this page, and it is worked out again.
    </Notice>
  ) : (
    <Notice tone="wrong">
      The calculation failed, which is a fault of the app and not of yours: {message}. What you
      entered is kept. Save the garment as a file and load the page again.
    </Notice>
  );

export const Working = () => (
  <p className="df-soft" role="status">
    Working it out…
  </p>
);
