import { GARMENT_KINDS, type GarmentKind } from '@dryflat/engine/garment';
import { useState } from 'react';
import { Button, Dialog, kindName, Select, TextField } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { go } from '../../shell/route.ts';
import { createGarment, useView } from '../../store/index.ts';

/** Puts an empty garment on the shelf and opens it where the telling begins. */
const Begin = ({ onClose }: { onClose: () => void }) => {
  const { words } = useView();
  const [name, setName] = useState('');
  const [kind, setKind] = useState<GarmentKind>('pullover-set-in');
  const begin = async (): Promise<void> => {
    const id = await createGarment(name.trim() || kindName(kind, words), kind);
    onClose();
    go(garmentHash(id, 'wearer'));
  };
  return (
    <Dialog
      title="Begin a garment"
      onClose={onClose}
      foot={
        <Button look="main" onPress={() => void begin()}>
          Put it on the shelf
        </Button>
      }
    >
      <TextField
        label="What do you call it?"
        value={name}
        onChange={setName}
        hint="May stay empty for now."
        autoFocus
      />
      <Select
        label="What is it?"
        value={kind}
        onChange={setKind}
        options={GARMENT_KINDS.map((value) => ({ value, label: kindName(value, words) }))}
      />
    </Dialog>
  );
};
export default Begin;
