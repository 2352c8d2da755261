import type { Fault } from '@dryflat/engine/units';
import { type ReactNode, useEffect, useState } from 'react';
import { Button, Disclosure, FaultList } from '../kit/index.ts';
import { recordFaults } from '../store/index.ts';
import { SHELF } from './hash.ts';
import { Loading } from './loading.tsx';
import { saveGarment } from './save-garment.ts';

/** Says that a garment's record is not sound, where that is so, and saves what is there; else `otherwise`. */
const RecordFault = ({
  garment,
  page,
  otherwise,
}: {
  garment: string;
  page: boolean;
  otherwise: ReactNode;
}) => {
  const [faults, setFaults] = useState<readonly Fault[] | null>(null);
  useEffect(() => {
    let here = true;
    const take = (found: readonly Fault[]): void => {
      if (here) setFaults(found);
    };
    recordFaults(garment).then(take, () => take([]));
    return () => {
      here = false;
    };
  }, [garment]);
  if (faults === null) return <Loading />;
  if (faults.length === 0) return otherwise;
  const [Root, Title] = page ? (['main', 'h1'] as const) : (['div', 'h2'] as const);
  return (
    <Root className="df-page">
      <Title>This garment cannot be read</Title>
      <p role="alert">
        What this device keeps of it is damaged. Nothing of it was deleted; save what is there as a
        file before you do anything else with it.
      </p>
      <div className="df-row">
        <Button look="main" icon="fetch" onPress={() => void saveGarment(garment)}>
          Save what is there as a file
        </Button>
        <a className="df-button" href={SHELF}>
          Go to the shelf
        </a>
      </div>
      <Disclosure
        level={2}
        title={
          faults.length === 1
            ? 'What is wrong with it'
            : `What is wrong with it: ${faults.length} places`
        }
      >
        <FaultList faults={faults} ofFile />
      </Disclosure>
    </Root>
  );
};
export default RecordFault;
