import { GARMENT_KINDS, type GarmentKind } from '@dryflat/engine/garment';
import { useState } from 'react';
import { Button, Dialog, kindName, Select, TextField } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { go } from '../../shell/route.ts';
import { createGarment, readLocal, removeLocal, useView, writeLocal } from '../../store/index.ts';

/** A name that is typed before its garment exists outlives the tab too. */
const UNFINISHED = 'dryflat-unfinished-name';

/** Puts an empty garment on the shelf and opens it where the telling begins. */
const Begin = ({ onClose }: { onClose: () => void }) => {
  const { words } = useView();
  const [name, setName] = useState(() => readLocal(UNFINISHED) ?? '');
  const [kind, setKind] = useState<GarmentKind>('pullover-set-in');
  const begin = async (): Promise<void> => {
    removeLocal(UNFINISHED);
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
        onChange={(text) => {
          setName(text);
          writeLocal(UNFINISHED, text);
        }}
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
