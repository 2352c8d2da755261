import { faultsOf, isDoubt } from '@dryflat/record';
import { useMemo } from 'react';
import { useGarment } from '../store/index.ts';
import { Notice } from './card.tsx';
import { FaultList } from './fault-list.tsx';
import { useFaultText } from './use-fault-text.ts';

/** What the record says under `prefix` that cannot be, or is unlikely; codes shown elsewhere are left out. */
export const SectionFaults = ({
  prefix,
  except = [],
}: {
  prefix: string;
  except?: readonly string[];
}) => {
  const { record } = useGarment();
  const print = useFaultText();
  const found = useMemo(
    () =>
      faultsOf(record).filter(
        ({ field, code }) => field.startsWith(prefix) && !except.includes(code),
      ),
    [record, prefix, except],
  );
  const told = found.map((each) => ({
    ...each,
    field: '',
    given: '',
    problem: print(each.problem),
    mend: print(each.mend),
  }));
  const wrong = found.some((each) => !isDoubt(each));
  return (
    told.length > 0 && (
      <Notice tone={wrong ? 'wrong' : 'unsure'}>
        <FaultList faults={told} />
      </Notice>
    )
  );
};
