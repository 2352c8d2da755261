import { Button, toast } from '../kit/index.ts';
import { duplicateGarment, restoreGarment, trashGarment } from '../store/index.ts';
import { garmentHash } from './hash.ts';
import { go } from './route.ts';
import { saveGarment } from './save-garment.ts';

export interface GarmentActionsProps {
  id: string;
  name: string;
  onDone: () => void;
  onTrashed?: () => void;
}

/** A copy, a file, or the trash. */
export const GarmentActions = ({ id, name, onDone, onTrashed }: GarmentActionsProps) => {
  const copy = async (): Promise<void> => {
    const made = await duplicateGarment(id);
    onDone();
    if (made === null) return;
    toast(`A copy of “${name}” is on the shelf.`);
    go(garmentHash(made));
  };
  const save = async (): Promise<void> => {
    await saveGarment(id);
    onDone();
  };
  const trash = async (): Promise<void> => {
    await trashGarment(id);
    onDone();
    onTrashed?.();
    toast(`“${name}” is in the trash.`, () => void restoreGarment(id));
  };
  return (
    <div className="df-row">
      <Button icon="copy" onPress={() => void copy()}>
        Make a copy
      </Button>
      <Button icon="fetch" onPress={() => void save()}>
        Save as a file
      </Button>
      <Button icon="bin" onPress={() => void trash()}>
        Put in the trash
      </Button>
    </div>
  );
};
