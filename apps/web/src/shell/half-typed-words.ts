/** Letters of a text and texts of a list that are repeated: enough to find the field again. */
const LETTERS = 24;
const TEXTS = 3;

const repeated = (text: string): string =>
  `“${text.length > LETTERS ? `${text.slice(0, LETTERS)}…` : text}”`;

/** Says which entries are half typed and therefore not in what is saved; empty where none is. */
export const halfTypedWords = (texts: readonly string[]): string => {
  if (texts.length === 0) return '';
  const count = texts.length === 1 ? 'One entry is' : `${texts.length} entries are`;
  const more = texts.length > TEXTS ? ' and more' : '';
  return `${count} half typed, and not in it: ${texts.slice(0, TEXTS).map(repeated).join(', ')}${more}.`;
};
