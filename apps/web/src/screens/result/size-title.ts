import { sizeWords } from '@dryflat/engine/garment';

/** `Size 3`; `One size` as it is. */
export const sizeTitle = (label: string): string => {
  const words = sizeWords(label);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};
