import './sources.css';
import { REFERENCES } from '@dryflat/engine/textile';
import dataLicence from '../../../../../packages/engine/src/fabric/extension-data.LICENSE?raw';
import { Disclosure } from '../../kit/index.ts';

const STANDING: Readonly<Record<string, string>> = {
  read: 'read',
  'read-second-hand': 'read in a quotation',
  'from-memory': 'from memory',
  data: 'open data, computed from',
};

/** The published works behind the tables, and the licence of the data that is shipped with the app. */
const Sources = () => (
  <>
    <Disclosure title="The works behind the tables">
      <ul className="df-sources">
        {Object.entries(REFERENCES).map(([key, work]) => (
          <li key={key}>
            {work.authors} ({work.year}). {work.title}. {work.where}.{' '}
            <small>{STANDING[work.standing] ?? work.standing}</small>
          </li>
        ))}
      </ul>
    </Disclosure>
    <Disclosure title="Licence of the measured fabrics">
      <pre className="df-licence">{dataLicence}</pre>
    </Disclosure>
  </>
);
export default Sources;
