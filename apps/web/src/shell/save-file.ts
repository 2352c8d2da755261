import { useCallback } from 'react';
import { toast } from '../kit/index.ts';
import { halfTyped } from '../store/half-typed.ts';
import { useDrafts } from '../store/index.ts';
import { halfTypedWords } from './half-typed-words.ts';

/** Hands it to the browser as a file to keep. */
export const saveFile = (name: string, content: BlobPart, type = 'application/json'): void => {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};

/** Tells what of the open garment does not go out with it, as it is half typed. */
export const useTellHalfTyped = (): (() => void) => {
  const drafts = useDrafts();
  return useCallback(() => {
    const words = halfTypedWords(halfTyped(drafts));
    if (words !== '') toast(words);
  }, [drafts]);
};

/** Saves files of the open garment, and tells what is not in them. */
export const useSaveFile = (): typeof saveFile => {
  const tell = useTellHalfTyped();
  return useCallback(
    (...file) => {
      saveFile(...file);
      tell();
    },
    [tell],
  );
};
