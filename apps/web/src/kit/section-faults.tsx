import type { Fault } from '@dryflat/engine/units';
import { faultsBesidePhotos, type GarmentRecord, mustBeMended } from '@dryflat/record';
import { useGarment } from '../store/index.ts';
import { Notice } from './card.tsx';
import { FaultList } from './fault-list.tsx';
import { useFaultText } from './use-fault-text.ts';

const known = new WeakMap<GarmentRecord, readonly Fault[]>();

/** Faults of a record, worked out once for all who show some of them; those of photos stand beside them. */
const faultsIn = (record: GarmentRecord): readonly Fault[] => {
  const found = known.get(record) ?? faultsBesidePhotos(record);
  known.set(record, found);
  return found;
};

/** What the record says under `prefix` that cannot be, or is unlikely; what is shown elsewhere, by its code or by where it begins, is left out. */
export const SectionFaults = ({
  prefix,
  except = [],
  elsewhere,
}: {
  prefix: string;
  except?: readonly string[];
  elsewhere?: string;
}) => {
  const { record } = useGarment();
  const print = useFaultText();
  const found = faultsIn(record).filter(
    ({ field, code }) =>
      field.startsWith(prefix) &&
      !except.includes(code) &&
      !(elsewhere !== undefined && field.startsWith(elsewhere)),
  );
  const told = found.map((each) => ({
    ...each,
    field: '',
    given: '',
    problem: print(each.problem),
    mend: print(each.mend),
  }));
  const wrong = found.some(mustBeMended);
  return (
    told.length > 0 && (
      <Notice tone={wrong ? 'wrong' : 'unsure'}>
        <FaultList faults={told} />
      </Notice>
    )
  );
};
