import { useState } from 'react';
import { Button, ChoiceChips, Dialog, TextField } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { addRow, ownLandmark } from '../pattern/change-pattern.ts';

/** Makes up a place: it gets a row in the pattern, and body and wish refer to it. */
export const OwnPlace = ({
  onAdded,
  onClose,
}: {
  onAdded: (landmark: string) => void;
  onClose: () => void;
}) => {
  const { record, change } = useGarment();
  const [name, setName] = useState('');
  const [direction, setDirection] = useState<'width' | 'length' | null>(null);
  const landmark = ownLandmark(name);
  const taken = record.pattern.measurements.some((each) => each.landmark === landmark);
  const ready = name.trim() !== '' && direction !== null && !taken;
  const add = (): void => {
    if (direction === null) return;
    change((draft) => addRow(draft, { id: newId(), name: name.trim(), landmark, direction }));
    onAdded(landmark);
    onClose();
  };
  return (
    <Dialog
      title="A place of your own"
      onClose={onClose}
      foot={
        <Button look="main" isDisabled={!ready} onPress={add}>
          Add it
        </Button>
      }
    >
      <TextField
        label="What is it called?"
        hint="Such as elbow, or depth of the hood. The pattern gets a row for it too."
        value={name}
        onChange={setName}
        fault={taken ? 'There is such a place already.' : undefined}
        maxLength={70}
        autoFocus
      />
      <ChoiceChips
        label="Which way does it run on the knitting?"
        value={direction}
        onChange={setDirection}
        choices={[
          { value: 'width', label: 'Along a row', note: 'Around an elbow, across a hood.' },
          { value: 'length', label: 'Up the rows', note: 'How long, how deep.' },
        ]}
      />
    </Dialog>
  );
};
