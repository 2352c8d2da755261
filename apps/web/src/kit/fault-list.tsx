import type { Fault } from '@dryflat/engine/units';
import { asSentence } from './as-sentence.ts';
import './card.css';

/** `dryings[0].weighings[2].at`, `massG`: places in a file, which mean nothing to who sees no file. */
const isPath = (field: string): boolean => /[.[\]/]|[a-z][A-Z]/.test(field);

/**
 * Faults as a list: what is wrong, what was given, how to mend it. Nothing where there are none.
 * `ofFile`: they are of a file, so that a field's place in it is worth naming.
 */
export const FaultList = ({
  faults,
  ofFile = false,
}: {
  faults: readonly Fault[];
  ofFile?: boolean;
}) =>
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
          {fault.field !== '' && (ofFile || !isPath(fault.field)) && (
            <span className="df-soft"> ({fault.field})</span>
          )}
        </li>
      ))}
    </ul>
  );
