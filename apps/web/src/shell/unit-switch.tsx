import { Button as AriaButton } from 'react-aria-components';
import { useView } from '../store/index.ts';

/** Turns every length in sight from centimetres to inches and back. */
export const UnitSwitch = () => {
  const { units, setUnits } = useView();
  const other = units === 'cm' ? 'in' : 'cm';
  return (
    <AriaButton
      className="df-units"
      aria-label={`Lengths in ${units}, change to ${other}`}
      onPress={() => setUnits(other)}
    >
      <span data-on={units === 'cm' || undefined}>cm</span>
      <span data-on={units === 'in' || undefined}>in</span>
    </AriaButton>
  );
};
