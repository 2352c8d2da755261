/** `size 3`; a label that says so itself, `One size`, is left as it is. */
export const sizeWords = (label: string): string =>
  /\bsize\b/i.test(label) ? label : `size ${label}`;
