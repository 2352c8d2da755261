import { faultsOf, isDoubt } from '@dryflat/record';
import { useMemo } from 'react';
import { useGarment } from '../store/index.ts';
import { Notice } from './card.tsx';
import { FaultList } from './fault-list.tsx';
import { useLengths } from './use-lengths.ts';

/** Faults of files name lengths as `508 mm (20 in)`: here they are printed like all others. */
const FILE_LENGTH = /(-?\d+(?:\.\d+)?) mm \(-?[\d.]+ in\)/g;

/** What the record says under `prefix` that cannot be, or is unlikely; codes shown elsewhere are left out. */
export const SectionFaults = ({
  prefix,
  except = [],
}: {
  prefix: string;
  except?: readonly string[];
}) => {
  const { record } = useGarment();
  const { length, sentence } = useLengths();
  const print = (text: string): string =>
    sentence(text.replace(FILE_LENGTH, (_, value: string) => length(Number(value))));
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
