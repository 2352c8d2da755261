/** A name for a file from a garment's: letters and numbers of any script, joined by hyphens. */
export const fileNameOf = (name: string, what: string): string => {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain || 'garment'}-${what}`;
};
