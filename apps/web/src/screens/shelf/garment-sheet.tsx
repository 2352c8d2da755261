import { useState } from 'react';
import { Button, Dialog, TextField } from '../../kit/index.ts';
import { GarmentActions } from '../../shell/garment-actions.tsx';
import { renameGarment, type ShelfEntry } from '../../store/index.ts';

/** Name, copy, file and trash, without opening the garment. */
const GarmentSheet = ({ entry, onClose }: { entry: ShelfEntry; onClose: () => void }) => {
  const [name, setName] = useState(entry.name);
  const rename = (next: string): void => {
    setName(next);
    void renameGarment(entry.id, next);
  };
  return (
    <Dialog
      title={entry.name || 'No name yet'}
      onClose={onClose}
      foot={
        <Button look="main" onPress={onClose}>
          Done
        </Button>
      }
    >
      <TextField label="Name" value={name} onChange={rename} />
      <GarmentActions id={entry.id} name={name} onDone={onClose} />
    </Dialog>
  );
};
export default GarmentSheet;
