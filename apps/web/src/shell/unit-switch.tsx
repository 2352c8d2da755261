import { Radio, RadioGroup } from 'react-aria-components';
import { type Units, useView } from '../store/index.ts';

/** Turns every length in sight from centimetres to inches and back. */
export const UnitSwitch = () => {
  const { units, setUnits } = useView();
  return (
    <RadioGroup
      className="df-units"
      aria-label="Lengths in"
      orientation="horizontal"
      value={units}
      onChange={(next) => setUnits(next as Units)}
    >
      <Radio value="cm">cm</Radio>
      <Radio value="in">in</Radio>
    </RadioGroup>
  );
};
