import { useState } from 'react';
import { Button, Dialog, TextField } from '../../kit/index.ts';
import { GarmentActions } from '../../shell/garment-actions.tsx';
import { renameGarment, type ShelfEntry } from '../../store/index.ts';

/** Name, copy, file and trash, without opening the garment. */
const GarmentSheet = ({ entry, onClose }: { entry: ShelfEntry; onClose: () => void }) => {
  const [name, setName] = useState(entry.name);
  const close = (): void => {
    if (name !== entry.name) void renameGarment(entry.id, name);
    onClose();
  };
  return (
    <Dialog
      title={entry.name || 'No name yet'}
      onClose={close}
      foot={
        <Button look="main" onPress={close}>
          Done
        </Button>
      }
    >
      <TextField label="Name" value={name} onChange={setName} />
      <GarmentActions id={entry.id} name={name} onDone={close} />
    </Dialog>
  );
};
export default GarmentSheet;
