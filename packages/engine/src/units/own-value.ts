/**
 * What a table holds under a word that somebody typed, or undefined. Words like `toString`, which every
 * object answers to, are found only where the table has them itself.
 */
export const ownValue = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;
