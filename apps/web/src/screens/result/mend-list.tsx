import type { Fault } from '@dryflat/engine/units';
import { isQuestion } from '@dryflat/record';
import { Icon, useFaultText } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { PLACE_LABELS, placeOfField } from './mend-place.ts';
import './result.css';

/** Faults with the way to where each is mended. */
export const MendList = ({ id, faults }: { id: string; faults: readonly Fault[] }) => {
  const print = useFaultText();
  return (
    <ul className="df-list">
      {faults.map((fault) => (
        <li key={`${fault.code} ${fault.field}`} className="df-mend">
          <p>
            <strong>{capital(print(fault.problem))}.</strong>
            {!isQuestion(fault) && <> {print(fault.mend)}</>}
          </p>
          <MendLink id={id} fault={fault} />
        </li>
      ))}
    </ul>
  );
};

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const MendLink = ({ id, fault }: { id: string; fault: Fault }) => {
  const place = placeOfField(fault.field);
  if (place === 'forecast') return null;
  return (
    <a className="df-button" href={garmentHash(id, place)}>
      <Icon name="pen" />
      {isQuestion(fault) ? 'Say it' : 'Mend it'} under {PLACE_LABELS[place]}
    </a>
  );
};
