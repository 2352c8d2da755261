import { toPlain } from './plain.ts';

/** The smallest pieces of a written quantity. */
export interface Lexeme {
  readonly kind: 'number' | 'word' | 'mark';
  readonly text: string;
}

const PIECE = /\s*(?:(\d[\d.,]*|[.,]\d[\d.,]*)|([a-zµ°\u00df-\u024f]+)\.?|(''|\S))/gu;

/** In plain lower case; a doubled apostrophe is an inch mark. */
export function lexemes(text: string): Lexeme[] {
  return [...toPlain(text).plain.toLowerCase().matchAll(PIECE)].map(([, number, word, mark]) => {
    if (number !== undefined) return { kind: 'number', text: number };
    if (word !== undefined) return { kind: 'word', text: word };
    return { kind: 'mark', text: mark === "''" ? '"' : (mark ?? '') };
  });
}
