const LETTERS = 'abcdefghijkmnpqrstuvwxyz23456789';

/** A fresh id of twelve letters and digits (60 bits), fit for records and for parts of them. */
export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => LETTERS[byte % 32]).join('');
