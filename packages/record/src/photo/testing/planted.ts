import { fromLetters, joined, viewOf } from '../bytes.ts';
import { PLAIN, type Plain } from './pictures.ts';

/** What is planted wherever a program may write beside a picture, as letters; it is searched for in what comes out. */
export const PLANTED = 'PLANTED 51.4778N 0.0014W 2031-02-14T18:30';

/** A way to write a text into a picture that shows the same pixels afterwards. */
export type Plant = (picture: Uint8Array, text: string) => Uint8Array;

/** Exif: turned a quarter to the right (0x0112, 6), a camera (0x0110), and a GPS directory with the text in 0x001d. */
const exif = (text: string): Uint8Array => {
  const words = fromLetters(`${text}\0`);
  const tiff = new Uint8Array(72 + 2 * words.length);
  const view = viewOf(tiff);
  tiff.set(fromLetters('II*\0'));
  view.setUint32(4, 8, true);
  view.setUint16(8, 3, true);
  const entry = (at: number, tag: number, type: number, count: number, value: number) => {
    view.setUint16(at, tag, true);
    view.setUint16(at + 2, type, true);
    view.setUint32(at + 4, count, true);
    view.setUint32(at + 8, value, true);
  };
  entry(10, 0x0110, 2, words.length, 68);
  entry(22, 0x0112, 3, 1, 6);
  entry(34, 0x8825, 4, 1, 50);
  view.setUint16(50, 1, true);
  entry(52, 0x001d, 2, words.length, 68 + words.length);
  tiff.set(words, 68);
  tiff.set(words, 68 + words.length);
  return tiff;
};

/** A segment of a JPEG right behind its first marker. */
const segment =
  (marker: number, contentOf: (text: string) => Uint8Array): Plant =>
  (picture, text) => {
    const content = contentOf(text);
    const length = content.length + 2;
    const head = Uint8Array.of(0xff, marker, length >> 8, length & 0xff);
    return joined([picture.subarray(0, 2), head, content, picture.subarray(2)]);
  };
const lettered = (before: string) => (text: string) => fromLetters(`${before}${text}`);

/** A text in place of the maker's in the colour profile that is there: same length, so that it stays one. */
const inProfile: Plant = (picture, text) => {
  const planted = picture.slice();
  const letters = lettersOf(picture);
  const profile = letters.indexOf('acsp') - 36;
  const from = profile + viewOf(picture).getUint32(letters.indexOf('cprt', profile) + 4);
  planted.set(fromLetters(`text\0\0\0\0${text.padEnd(60, '.').slice(0, 51)}\0`), from);
  return planted;
};

const behind =
  (tail: (text: string) => Uint8Array): Plant =>
  (picture, text) =>
    joined([picture, tail(text)]);

/** CRC of ISO/IEC 15948, section 5.5, bit by bit. */
const sumOf = (bytes: Uint8Array): number => {
  let value = ~0;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit += 1) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0);
  }
  return ~value >>> 0;
};

/** The first bytes of a PNG, and those of its header with them. */
export const PNG_START = fromLetters('\x89PNG\r\n\x1a\n');
const PNG_HEAD = PNG_START.length + 25;

/** A chunk of a PNG, with its length and its sum. */
export const chunk = (type: string, content: Uint8Array): Uint8Array => {
  const named = joined([fromLetters(type), content]);
  const ends = new Uint8Array(8);
  viewOf(ends).setUint32(0, content.length);
  viewOf(ends).setUint32(4, sumOf(named));
  return joined([ends.subarray(0, 4), named, ends.subarray(4)]);
};

/** A chunk right behind the header. */
const chunked =
  (type: string, contentOf: (text: string) => Uint8Array): Plant =>
  (picture, text) =>
    joined([
      picture.subarray(0, PNG_HEAD),
      chunk(type, contentOf(text)),
      picture.subarray(PNG_HEAD),
    ]);

/** Chunks of a PNG right before its end. */
const last =
  (chunksOf: (text: string) => readonly Uint8Array[]): Plant =>
  (picture, text) => {
    const end = lettersOf(picture).indexOf('IEND') - 4;
    return joined([picture.subarray(0, end), ...chunksOf(text), picture.subarray(end)]);
  };

/** A chunk of a WebP behind all others, with the flag of its kind set. */
const riff =
  (name: string, flag: number, contentOf: (text: string) => Uint8Array): Plant =>
  (picture, text) => {
    const content = contentOf(text);
    const head = new Uint8Array(8);
    head.set(fromLetters(name));
    viewOf(head).setUint32(4, content.length, true);
    const end = 8 + viewOf(picture).getUint32(4, true);
    const planted = joined([
      picture.subarray(0, end),
      head,
      content,
      new Uint8Array(content.length % 2),
      picture.subarray(end),
    ]);
    const grown = planted.length - picture.length;
    viewOf(planted).setUint32(4, end - 8 + grown, true);
    planted[20]! |= flag;
    return planted;
  };

/** Where programs write beside the picture, by format. */
const JPEG: Readonly<Record<string, Plant>> = {
  Exif: segment(0xe1, (text) => joined([fromLetters('Exif\0\0'), exif(text)])),
  XMP: segment(0xe1, lettered('http://ns.adobe.com/xap/1.0/\0')),
  'a comment': segment(0xfe, lettered('')),
  IPTC: segment(0xed, lettered('Photoshop 3.0\x008BIM')),
  'an index of pictures': segment(0xe2, lettered('MPF\0')),
  'a profile that is none': segment(0xe2, lettered('ICC_PROFILE\0\x01\x01')),
  'a maker’s segment': segment(0xeb, lettered('')),
  'the last segment of an application': segment(0xef, lettered('')),
  'a small picture': segment(0xe0, (text) =>
    joined([
      fromLetters('JFIF\0\x01\x01\0\0\x01\0\x01'),
      Uint8Array.of(Math.floor(text.length / 3), 1),
      fromLetters(text),
    ]),
  ),
  'a small picture of its own': segment(0xe0, lettered('JFXX\0\x10')),
  'Adobe, with more': segment(0xee, lettered('Adobe\0\x64\0\0\0\0\x01')),
  'a profile’s text': inProfile,
  'a second picture': behind((text) => segment(0xfe, lettered(''))(PLAIN.jpeg, text)),
  'a film': behind(lettered('\0\0\0\x18ftypmp42')),
};

const PNG: Readonly<Record<string, Plant>> = {
  tEXt: chunked('tEXt', lettered('Comment\0')),
  iTXt: chunked('iTXt', lettered('XML:com.adobe.xmp\0\0\0\0\0')),
  zTXt: chunked('zTXt', lettered('Comment\0\0')),
  eXIf: chunked('eXIf', exif),
  tIME: chunked('tIME', lettered('')),
  iCCP: chunked('iCCP', lettered('')),
  'a chunk of its own': chunked('prVt', lettered('')),
  'more behind the pixels': last((text) => [chunk('IDAT', fromLetters(text))]),
  'pixels once more': last((text) => [
    chunk('tEXt', fromLetters('a\0b')),
    chunk('IDAT', fromLetters(text)),
  ]),
  'a clear colour in pixels that say theirs': chunked('tRNS', lettered('')),
  'a palette that is none': chunked('PLTE', (text) => fromLetters(text.padEnd(42, '.'))),
  'too long a gamma': chunked('gAMA', lettered('')),
  'a second picture': behind((text) => chunked('tEXt', lettered('Place\0'))(PLAIN.png, text)),
  'a text behind it': behind(lettered('\n')),
};

const WEBP: Readonly<Record<string, Plant>> = {
  EXIF: riff('EXIF', 0x08, exif),
  'XMP ': riff('XMP ', 0x04, lettered('')),
  'a chunk of its own': riff('NOTE', 0, lettered('')),
  'a second profile': riff('ICCP', 0x20, lettered('')),
  'a profile’s text': inProfile,
  'a second picture': behind((text) => riff('NOTE', 0, lettered(''))(PLAIN.lossy, text)),
  'a text behind it': behind(lettered('\n')),
};

export const PLANTS: Readonly<Record<Plain, Readonly<Record<string, Plant>>>> = {
  jpeg: JPEG,
  png: PNG,
  lossy: WEBP,
  clear: WEBP,
  lossless: WEBP,
};

/** A picture with the text in every place at once. */
export const plantedAll = (plain: Plain, text: string): Uint8Array =>
  Object.values(PLANTS[plain]).reduce((picture, plant) => plant(picture, text), PLAIN[plain]);

/** Bytes as the letters of their numbers: what a search for a text looks through. */
export const lettersOf = (bytes: Uint8Array): string => {
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return letters;
};
