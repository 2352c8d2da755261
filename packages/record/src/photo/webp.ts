import { joined, lettersAt, viewOf } from './bytes.ts';
import { onlyColours } from './colour-profile.ts';
import { onlyOrientation } from './orientation.ts';

/** RFC 9649. A chunk is a name of four letters, the length of its content, and the content, padded to be even. */
interface Chunk {
  readonly name: string;
  readonly content: Uint8Array;
}

const HEAD = 8;

/** The chunks that fill `bytes`; null where they do not. */
const chunksOf = (bytes: Uint8Array): readonly Chunk[] | null => {
  const chunks: Chunk[] = [];
  const view = viewOf(bytes);
  let at = 0;
  while (at + HEAD <= bytes.length) {
    const name = lettersAt(bytes, at, 4);
    const length = view.getUint32(at + 4, true);
    if (at + HEAD + length > bytes.length || !/^[ -~]{4}$/.test(name)) return null;
    chunks.push({ name, content: bytes.subarray(at + HEAD, at + HEAD + length) });
    at += HEAD + length + (length % 2);
  }
  return at === bytes.length ? chunks : null;
};

const written = ({ name, content }: Chunk): Uint8Array => {
  const bytes = new Uint8Array(HEAD + content.length + (content.length % 2));
  for (let letter = 0; letter < 4; letter += 1) bytes[letter] = name.charCodeAt(letter);
  viewOf(bytes).setUint32(4, content.length, true);
  bytes.set(content, HEAD);
  return bytes;
};

/** A key frame of VP8 (RFC 6386, section 9.1), and the signature of VP8L (RFC 9649, section 3.4). */
const isPicture = ({ name, content }: Chunk): boolean =>
  name === 'VP8 '
    ? content.length > 10 && lettersAt(content, 3, 3) === '\x9d\x01\x2a'
    : name === 'VP8L' && content.length > 5 && content[0] === 0x2f;

/** The picture, with the transparency before it where it has one; null where there is none. */
const pictureIn = (chunks: readonly Chunk[]): readonly Chunk[] | null => {
  const at = chunks.findIndex(isPicture);
  if (at === -1) return null;
  const alpha = chunks.slice(0, at).findLast(({ name }) => name === 'ALPH');
  return alpha === undefined || chunks[at]!.name === 'VP8L' ? [chunks[at]!] : [alpha, chunks[at]!];
};

/** Place, size and time of a frame, before its own chunks: section 2.7.1.1. */
const FRAME = 16;

const frameOf = ({ content }: Chunk): Chunk | null => {
  const inner = chunksOf(content.subarray(FRAME));
  const picture = inner && pictureIn(inner);
  return picture && content.length > FRAME
    ? {
        name: 'ANMF',
        content: joined([content.subarray(0, FRAME), ...picture.map(written)]),
      }
    : null;
};

/** All frames of a film; null where one cannot be read. */
const filmIn = (chunks: readonly Chunk[]): readonly Chunk[] | null => {
  const start = chunks.find(({ name, content }) => name === 'ANIM' && content.length === 6);
  const frames = chunks.filter(({ name }) => name === 'ANMF').map(frameOf);
  const read = frames.flatMap((each) => (each === null ? [] : [each]));
  return start && read.length > 0 && read.length === frames.length ? [start, ...read] : null;
};

/** Bits of VP8X: section 2.7.1. */
const [PROFILE, ALPHA, EXIF, FILM] = [0x20, 0x10, 0x08, 0x02];

const named = (name: string, content: Uint8Array | null | undefined): Chunk[] =>
  content ? [{ name, content }] : [];

/** Some write the name of a JPEG's segment before the notes. */
const tiffIn = (content: Uint8Array): Uint8Array =>
  lettersAt(content, 0, 6) === 'Exif\0\0' ? content.subarray(6) : content;

const extended = (chunks: readonly Chunk[]): readonly Chunk[] | null => {
  const [{ content }] = chunks as readonly [Chunk];
  if (content.length !== 10) return null;
  const picture = content[0]! & FILM ? filmIn(chunks) : pictureIn(chunks);
  if (picture === null) return null;
  const contentOf = (name: string) => chunks.find((each) => each.name === name)?.content;
  const [profile, notes] = [contentOf('ICCP'), contentOf('EXIF')];
  const colours = named('ICCP', profile && onlyColours(profile));
  const turned = named('EXIF', notes && onlyOrientation(tiffIn(notes)));
  const flags = new Uint8Array(10);
  flags.set(content.subarray(4), 4);
  flags[0] =
    (content[0]! & (ALPHA | FILM)) |
    (colours.length > 0 ? PROFILE : 0) |
    (turned.length > 0 ? EXIF : 0);
  return [{ name: 'VP8X', content: flags }, ...colours, ...picture, ...turned];
};

/**
 * A WebP with what it is decoded from, and nothing else: no notes of a camera but how it is turned, no
 * chunk that is not known, nothing behind its end. The picture itself is the same, byte for byte. Null
 * where `bytes` is no whole WebP.
 */
export const cleanWebp = (bytes: Uint8Array): Uint8Array | null => {
  if (lettersAt(bytes, 0, 4) !== 'RIFF' || lettersAt(bytes, 8, 4) !== 'WEBP') return null;
  const end = HEAD + viewOf(bytes).getUint32(4, true);
  if (end > bytes.length) return null;
  const chunks = chunksOf(bytes.subarray(12, end));
  if (!chunks) return null;
  const kept = chunks[0]?.name === 'VP8X' ? extended(chunks) : chunks[0] && pictureIn([chunks[0]]);
  if (!kept) return null;
  const content = joined(kept.map(written));
  const head = bytes.slice(0, 12);
  viewOf(head).setUint32(4, content.length + 4, true);
  return joined([head, content]);
};
