import type { Result } from '@dryflat/engine/units';
import type { ReactNode } from 'react';
import { FaultList, useFaultText } from '../../kit/index.ts';

/** What a sum gives, or why it cannot; nothing until all its numbers are there. */
export const SumAnswer = <T,>({
  result,
  children,
}: {
  result: Result<T> | null;
  children: (value: T) => ReactNode;
}) => {
  const print = useFaultText();
  return (
    <div className="co-answer" role="status">
      {result === null && (
        <span className="df-soft">Fill in the numbers, and it is worked out.</span>
      )}
      {result?.ok && children(result.value)}
      {result && !result.ok && (
        <FaultList
          faults={result.faults.map((fault) => ({
            ...fault,
            field: '',
            given: '',
            problem: print(fault.problem),
          }))}
        />
      )}
    </div>
  );
};
