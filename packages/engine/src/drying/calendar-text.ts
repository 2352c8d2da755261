/**
 * Text of a calendar file: RFC 5545, section 3.1 (content lines) and 3.3.11 (text).
 */
const CRLF = '\r\n';
/** Octets of a line without its break. */
const LONGEST = 75;

/** A value of type TEXT: backslash, semicolon, comma and line breaks escaped, other controls left out. */
export const escapeText = (text: string): string =>
  text
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 5545 forbids these, tab excepted.
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');

const octets = (character: string): number => new TextEncoder().encode(character).length;

/** One content line, folded so that no line is over 75 octets; no character is cut. */
export const foldLine = (line: string): string => {
  let folded = '';
  let used = 0;
  for (const character of line) {
    const size = octets(character);
    if (used + size > LONGEST) {
      folded += `${CRLF} `;
      used = 1;
    }
    folded += character;
    used += size;
  }
  return folded + CRLF;
};

/** DATE-TIME in UTC, form 2 of section 3.3.5: `20240307T140500Z`; milliseconds are cut. */
export const utcStamp = (epochMs: number): string =>
  new Date(epochMs).toISOString().replace(/[-:]|\.\d{3}/g, '');
