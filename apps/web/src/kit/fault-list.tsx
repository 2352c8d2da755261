import type { Fault } from '@dryflat/engine/units';
import { asSentence } from './as-sentence.ts';
import './card.css';

/** Faults as a list: what is wrong, what was given, how to mend it. Nothing where there are none. */
export const FaultList = ({ faults }: { faults: readonly Fault[] }) =>
  faults.length > 0 && (
    <ul className="df-faults">
      {faults.map((fault, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: faults have no id and the list is replaced whole
        <li key={i}>
          <strong>{asSentence(fault.problem)}</strong>
          {fault.given !== '' && (
            <>
              {' '}
              Given: <q>{fault.given}</q>.
            </>
          )}{' '}
          {fault.mend}
          {fault.field !== '' && <span className="df-soft"> ({fault.field})</span>}
        </li>
      ))}
    </ul>
  );
