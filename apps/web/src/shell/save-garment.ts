import { toast } from '../kit/index.ts';
import { exportGarment } from '../store/index.ts';
import { halfTypedWords } from './half-typed-words.ts';
import { saveFile } from './save-file.ts';

/** Saves a garment as a file, and tells what is not in it. */
export const saveGarment = async (id: string): Promise<void> => {
  const file = await exportGarment(id);
  if (file === null) return;
  saveFile(file.fileName, file.text);
  for (const words of [halfTypedWords(file.halfTyped), leftOutWords(file.picturesLeftOut)])
    if (words !== '') toast(words);
};

const leftOutWords = (count: number): string => {
  if (count === 0) return '';
  const pictures = count === 1 ? 'One picture is' : `${count} pictures are`;
  return `${pictures} not in it: place and time could not be looked for there.`;
};
