import { ChoiceChips, FieldGroup } from '../kit/index.ts';
import { useView } from '../store/index.ts';

/** How everything is shown, everywhere at once. */
export const ViewChoices = () => {
  const view = useView();
  return (
    <FieldGroup legend="How it is shown">
      <ChoiceChips
        label="Lengths"
        value={view.units}
        onChange={view.setUnits}
        choices={[
          { value: 'cm', label: 'Centimetres' },
          { value: 'in', label: 'Inches' },
        ]}
      />
      <ChoiceChips
        label="Words of the craft"
        value={view.words}
        onChange={view.setWords}
        choices={[
          { value: 'us', label: 'American: gauge, bind off' },
          { value: 'uk', label: 'British: tension, cast off' },
        ]}
      />
      <ChoiceChips
        label="Light"
        value={view.theme}
        onChange={view.setTheme}
        choices={[
          { value: 'system', label: 'As the device' },
          { value: 'light', label: 'Light' },
          { value: 'dark', label: 'Dark' },
        ]}
      />
    </FieldGroup>
  );
};
