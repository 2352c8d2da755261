import { Button, toast } from '../kit/index.ts';
import { duplicateGarment, exportGarment, restoreGarment, trashGarment } from '../store/index.ts';
import { halfTypedWords } from './half-typed-words.ts';
import { garmentHash } from './hash.ts';
import { go } from './route.ts';
import { saveFile } from './save-file.ts';

const leftOutWords = (count: number): string => {
  if (count === 0) return '';
  const pictures = count === 1 ? 'One picture is' : `${count} pictures are`;
  return `${pictures} not in it: place and time could not be looked for there.`;
};

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
    const file = await exportGarment(id);
    onDone();
    if (file === null) return;
    saveFile(file.fileName, file.text);
    for (const words of [halfTypedWords(file.halfTyped), leftOutWords(file.picturesLeftOut)])
      if (words !== '') toast(words);
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
