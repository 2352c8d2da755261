import { fromLetters, joined, lettersAt } from './bytes.ts';
import { onlyColours } from './colour-profile.ts';
import { onlyOrientation } from './orientation.ts';

/** Markers: ITU-T T.81, table B.1. */
const [SOI, EOI, SOS, DQT, DHT, DRI] = [0xd8, 0xd9, 0xda, 0xdb, 0xc4, 0xdd];
/** Baseline, extended and progressive: what browsers and PDF readers show. */
const [SOF0, SOF2] = [0xc0, 0xc2];
const [APP0, APP1, APP2, APP14] = [0xe0, 0xe1, 0xe2, 0xee];
const isFrame = (marker: number): boolean =>
  marker >= SOF0 && marker <= 0xcf && ![DHT, 0xc8, 0xcc].includes(marker);
/** TEM and RST0 to RST7 stand alone, without a length. */
const standsAlone = (marker: number): boolean =>
  marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

interface Segment {
  readonly marker: number;
  /** Marker, length and content; of a scan the coded data behind it too. */
  readonly whole: Uint8Array;
  /** Content alone: no marker, no length, no coded data. */
  readonly content: Uint8Array;
}

/** Where the coded data that begins at `from` ends: at the next marker that is none of its own. */
const scanEnd = (bytes: Uint8Array, from: number): number => {
  for (let at = bytes.indexOf(0xff, from); at !== -1; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1];
    if (next !== undefined && next !== 0 && next !== 0xff && !standsAlone(next)) return at;
  }
  return bytes.length;
};

interface Found extends Segment {
  readonly end: number;
}

/** The segment that begins at `at`; null where the bytes are no JPEG there. */
const segmentAt = (bytes: Uint8Array, start: number): Found | null => {
  let at = start;
  if (bytes[at] !== 0xff) return null;
  // Any marker may be preceded by fill bytes.
  while (bytes[at + 1] === 0xff) at += 1;
  const marker = bytes[at + 1];
  if (marker === undefined) return null;
  const alone = marker === SOI || marker === EOI || standsAlone(marker);
  const length = alone ? 0 : ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
  const to = at + 2 + length;
  if ((!alone && length < 2) || to > bytes.length) return null;
  const end = marker === SOS ? scanEnd(bytes, to) : to;
  return { marker, whole: bytes.subarray(at, end), content: bytes.subarray(at + 4, to), end };
};

/** Segments of a JPEG from its first to its end; null where it is none, or is cut off. */
const segmentsOf = (bytes: Uint8Array): readonly Segment[] | null => {
  const segments: Segment[] = [];
  for (let at = 0; at < bytes.length; ) {
    const segment = segmentAt(bytes, at);
    if (segment === null || (segments.length === 0) !== (segment.marker === SOI)) return null;
    segments.push(segment);
    if (segment.marker === EOI) return segments;
    at = segment.end;
  }
  return null;
};

/** Tables one behind the other fill their segment: T.81, B.2.4.1 and B.2.4.2. */
const isFilled = (content: Uint8Array, lengthAt: (at: number) => number): boolean => {
  let at = 0;
  while (at < content.length) at += lengthAt(at);
  return at === content.length && at > 0;
};
const quantizers = (content: Uint8Array): boolean =>
  isFilled(content, (at) => [65, 129][content[at]! >> 4] ?? Number.POSITIVE_INFINITY);
const codes = (content: Uint8Array): boolean =>
  isFilled(
    content,
    (at) => 17 + content.subarray(at + 1, at + 17).reduce((sum, count) => sum + count, 0),
  );

/** Eight bits a sample, a size, and one, three or four colours: T.81, B.2.2. */
const frame = (content: Uint8Array): boolean => {
  const [bits, height1, height2, width1, width2, colours = 0] = content;
  const sized = (height1! | height2!) > 0 && (width1! | width2!) > 0;
  return bits === 8 && sized && [1, 3, 4].includes(colours) && content.length === 6 + 3 * colours;
};

/** What a picture is decoded from, each with what it must look like: nothing else fits in. */
const DECODED: Readonly<Record<number, (content: Uint8Array) => boolean>> = {
  [SOI]: () => true,
  [SOF0]: frame,
  [SOF0 + 1]: frame,
  [SOF2]: frame,
  [DHT]: codes,
  [DQT]: quantizers,
  [DRI]: ({ length }) => length === 2,
  [SOS]: (content) => content.length === 4 + 2 * (content[0] ?? 0),
  [EOI]: () => true,
};

const segment = (marker: number, content: Uint8Array): Uint8Array => {
  const length = content.length + 2;
  return joined([Uint8Array.of(0xff, marker, length >> 8, length & 0xff), content]);
};

const begins = (content: Uint8Array, name: string): boolean =>
  lettersAt(content, 0, name.length) === name;

/** JFIF, section 10.1, without its small picture: how colours are coded, and the shape of a pixel. */
const jfif = (heads: readonly Segment[]): Uint8Array[] => {
  const found = heads.find(
    ({ marker, content }) => marker === APP0 && begins(content, 'JFIF\0') && content.length >= 14,
  );
  return found === undefined
    ? []
    : [segment(APP0, joined([found.content.subarray(0, 12), Uint8Array.of(0, 0)]))];
};

/** How colours are coded, where Adobe's encoders say so: T.872, section 6.5.3. Decoders take the last. */
const adobe = (heads: readonly Segment[]): Uint8Array[] => {
  const found = heads.findLast(
    ({ marker, content }) => marker === APP14 && begins(content, 'Adobe') && content.length >= 12,
  );
  return found === undefined ? [] : [segment(APP14, found.content.subarray(0, 12))];
};

const EXIF = 'Exif\0\0';

const turned = (heads: readonly Segment[]): Uint8Array[] => {
  const found = heads.find(({ marker, content }) => marker === APP1 && begins(content, EXIF));
  const tiff = found && onlyOrientation(found.content.subarray(EXIF.length));
  return tiff ? [segment(APP1, joined([fromLetters(EXIF), tiff]))] : [];
};

const ICC = 'ICC_PROFILE\0';
/** Behind the name stand the part's number, from 1, and how many there are: ICC.1, annex B.4. */
const PART = ICC.length + 2;
/** The most that a segment holds, less its length and the head of a part. */
const MOST = 0xffff - 2 - PART;

const colours = (heads: readonly Segment[]): Uint8Array[] => {
  const parts = heads
    .filter(
      ({ marker, content }) => marker === APP2 && begins(content, ICC) && content.length > PART,
    )
    .sort((a, b) => a.content[PART - 2]! - b.content[PART - 2]!);
  const whole = parts.every(
    ({ content }, k) => content[PART - 2] === k + 1 && content[PART - 1] === parts.length,
  );
  const profile = whole
    ? onlyColours(joined(parts.map((each) => each.content.subarray(PART))))
    : null;
  if (profile === null) return [];
  const count = Math.ceil(profile.length / MOST);
  return Array.from({ length: count }, (_, k) => {
    const part = profile.subarray(MOST * k, MOST * (k + 1));
    return segment(APP2, joined([fromLetters(ICC), Uint8Array.of(k + 1, count), part]));
  });
};

/**
 * A JPEG with what it is decoded from, and nothing else: no notes of a camera, no comments, no small
 * second picture, nothing behind its end. How it is turned and what its colours mean stay, in few
 * bytes. The picture itself is the same, byte for byte. Null where `bytes` is no whole JPEG that
 * browsers and PDF readers show.
 */
export const cleanJpeg = (bytes: Uint8Array): Uint8Array | null => {
  const segments = segmentsOf(bytes);
  if (segments === null) return null;
  const scan = segments.findIndex(({ marker }) => marker === SOS);
  const frames = segments.filter(({ marker }) => isFrame(marker));
  if (scan === -1 || frames.length !== 1 || segments.indexOf(frames[0]!) > scan) return null;
  const kept = segments.filter(({ marker }) => marker in DECODED || isFrame(marker));
  if (!kept.every(({ marker, content }) => DECODED[marker]?.(content))) return null;
  const heads = segments.slice(0, scan);
  const [start, ...rest] = kept.map(({ whole }) => whole);
  return joined([
    start!,
    ...[jfif, turned, colours, adobe].flatMap((headOf) => headOf(heads)),
    ...rest,
  ]);
};
