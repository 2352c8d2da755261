import { formatLength } from '@dryflat/engine/units';
import { useView } from '../../store/index.ts';
import { lengthSaid } from './step-words.ts';

/**
 * A tape distance in letters that are read from where the mat is knelt at. Fractions stand as large as whole
 * inches: `42 3/8`.
 */
export const TapeNumber = ({ mm }: { mm: number }) => {
  const { units, words } = useView();
  const [whole = '', part] = formatLength(mm, { unit: units, style: 'ascii', bare: true }).split(
    ' ',
  );
  return (
    <span className="df-tape-number">
      <span aria-hidden="true">
        {whole}
        {part && <span className="df-tape-part">{part}</span>}
        <span className="df-tape-unit">{units}</span>
      </span>
      <span className="df-unseen">{lengthSaid(mm, { units, words })}</span>
    </span>
  );
};
