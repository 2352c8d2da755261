/** Bytes of a base64 text; null where it is none. */
export const fromBase64 = (text: string): Uint8Array<ArrayBuffer> | null => {
  try {
    const letters = atob(text);
    const bytes = new Uint8Array(letters.length);
    for (let at = 0; at < letters.length; at += 1) bytes[at] = letters.charCodeAt(at);
    return bytes;
  } catch {
    return null;
  }
};

/** Arguments of one call, which every engine takes. */
const AT_ONCE = 8192;

export const toBase64 = (bytes: Uint8Array): string => {
  let letters = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    letters += String.fromCharCode(...bytes.subarray(at, at + AT_ONCE));
  return btoa(letters);
};

/** Bytes as the letters of their numbers, as names in files are; short where they end early. */
export const lettersAt = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));

export const fromLetters = (letters: string): Uint8Array =>
  Uint8Array.from(letters, (letter) => letter.charCodeAt(0));

export const joined = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};

/** Reads numbers of `bytes`, and nothing around them. */
export const viewOf = ({ buffer, byteOffset, byteLength }: Uint8Array): DataView =>
  new DataView(buffer, byteOffset, byteLength);
