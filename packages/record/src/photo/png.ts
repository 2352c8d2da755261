import { unzlibSync } from 'fflate';
import { joined, lettersAt, viewOf } from './bytes.ts';
import { onlyOrientation } from './orientation.ts';

/** ISO/IEC 15948, section 5.2. */
const SIGNATURE = '\x89PNG\r\n\x1a\n';

/** Chunks that a picture is decoded from, and the longest that each may be, bytes: sections 11.2 and 11.3. */
const KEPT: Readonly<Record<string, number>> = {
  IHDR: 13,
  PLTE: 768,
  IDAT: Number.POSITIVE_INFINITY,
  IEND: 0,
  tRNS: 256,
  gAMA: 4,
  cHRM: 32,
  sRGB: 1,
  cICP: 4,
};

/** CRC of section 5.5, for one byte. */
const CRC = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});
const crcOf = (bytes: Uint8Array): number => {
  let value = 0xffffffff;
  for (const byte of bytes) value = CRC[(value ^ byte) & 0xff]! ^ (value >>> 8);
  return ~value >>> 0;
};

interface Chunk {
  readonly type: string;
  readonly content: Uint8Array;
  /** Length, type, content and CRC. */
  readonly whole: Uint8Array;
}

/** Chunks up to the end; null where the bytes are no PNG, or are cut off. */
const chunksOf = (bytes: Uint8Array): readonly Chunk[] | null => {
  if (lettersAt(bytes, 0, 8) !== SIGNATURE) return null;
  const view = viewOf(bytes);
  const chunks: Chunk[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at);
    const type = lettersAt(bytes, at + 4, 4);
    if (end > bytes.length || !/^[A-Za-z]{4}$/.test(type)) return null;
    chunks.push({ type, content: bytes.subarray(at + 8, end - 4), whole: bytes.subarray(at, end) });
    if (type === 'IEND') return chunks;
    at = end;
  }
  return null;
};

const isSound = ({ whole }: Chunk): boolean =>
  viewOf(whole).getUint32(whole.length - 4) === crcOf(whole.subarray(4, -4));

/** A chunk in capitals has to be understood: section 5.4. */
const isNeeded = ({ type }: Chunk): boolean => type.charAt(0) <= 'Z';

interface Shape {
  readonly width: number;
  readonly height: number;
  readonly bitsPerPixel: number;
  readonly interlaced: boolean;
}

/** Samples of a pixel and the bits that each may have, by the kind of colour: table 11.1. */
const COLOURS: Readonly<Record<number, readonly [samples: number, bits: readonly number[]]>> = {
  0: [1, [1, 2, 4, 8, 16]],
  2: [3, [8, 16]],
  3: [1, [1, 2, 4, 8]],
  4: [2, [8, 16]],
  6: [4, [8, 16]],
};

/** The longest side that a record has a picture of, px. */
const LONGEST = 10_000;
/** 25 million pixels of four bytes, more than any that fits into a record: a few kB can claim far more. */
const MOST_UNPACKED = 100_000_000;

const isSide = (length: number): boolean => length >= 1 && length <= LONGEST;

const shapeOf = (header: Uint8Array): Shape | null => {
  if (header.length !== KEPT.IHDR) return null;
  const [width, height] = [viewOf(header).getUint32(0), viewOf(header).getUint32(4)];
  const [bits, colour, packing, filter, interlace] = header.subarray(8);
  const [samples, allowed] = COLOURS[colour!] ?? [0, []];
  const known = allowed.includes(bits!) && packing === 0 && filter === 0 && interlace! <= 1;
  return known && isSide(width) && isSide(height)
    ? { width, height, bitsPerPixel: samples * bits!, interlaced: interlace === 1 }
    : null;
};

/** Where each pass of Adam7 begins, and its steps: section 8.2. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/** Rows of each pass and their bytes, the byte that names the filter counted: section 7.3. */
const rowsOf = ({ width, height, bitsPerPixel, interlaced }: Shape) =>
  (interlaced ? PASSES : ([[0, 0, 1, 1]] as const))
    .map(([x, y, dx, dy]) => ({
      across: Math.ceil((width - x) / dx),
      rows: Math.ceil((height - y) / dy),
    }))
    .filter(({ across, rows }) => across > 0 && rows > 0)
    .map(({ across, rows }) => ({ rows, bytes: 1 + Math.ceil((across * bitsPerPixel) / 8) }));

/** Whether what is packed holds every row of the picture, each with a filter that there is. */
const unpacks = (packed: Uint8Array, shape: Shape): boolean => {
  const passes = rowsOf(shape);
  const length = passes.reduce((sum, { rows, bytes }) => sum + rows * bytes, 0);
  if (length > MOST_UNPACKED) return false;
  try {
    const pixels = unzlibSync(packed, { out: new Uint8Array(length) });
    if (pixels.length !== length) return false;
    let at = 0;
    for (const { rows, bytes } of passes)
      for (let row = 0; row < rows; row += 1, at += bytes) if (pixels[at]! > 4) return false;
    return true;
  } catch {
    return false;
  }
};

const exif = (content: Uint8Array): Uint8Array => {
  const chunk = new Uint8Array(12 + content.length);
  const view = viewOf(chunk);
  view.setUint32(0, content.length);
  chunk.set([0x65, 0x58, 0x49, 0x66], 4);
  chunk.set(content, 8);
  view.setUint32(8 + content.length, crcOf(chunk.subarray(4, -4)));
  return chunk;
};

const turned = (chunks: readonly Chunk[]): Uint8Array[] => {
  const found = chunks.find(({ type }) => type === 'eXIf');
  const tiff = found && onlyOrientation(found.content);
  return tiff ? [exif(tiff)] : [];
};

/**
 * A PNG with what it is decoded from, and nothing else: no texts, no day, no notes of a camera but how
 * it is turned, nothing behind its end. Of colours the plain numbers stay; a packed profile, which may
 * name a device, goes. The picture itself is the same, byte for byte. Null where `bytes` is no whole
 * PNG.
 */
export const cleanPng = (bytes: Uint8Array): Uint8Array | null => {
  const chunks = chunksOf(bytes);
  const shape = chunks?.[0]?.type === 'IHDR' ? shapeOf(chunks[0].content) : null;
  if (!chunks || shape === null) return null;
  const known = chunks.filter(({ type, content }) => content.length <= (KEPT[type] ?? -1));
  const needed = chunks.filter(isNeeded);
  if (!needed.every((each) => known.includes(each)) || !known.every(isSound)) return null;
  const packed = joined(known.filter(({ type }) => type === 'IDAT').map((each) => each.content));
  const count = (type: string) => known.filter((each) => each.type === type).length;
  if (count('IHDR') !== 1 || (bytes[25] === 3 && count('PLTE') !== 1)) return null;
  if (!unpacks(packed, shape)) return null;
  const [header, ...rest] = known.map(({ whole }) => whole);
  return joined([bytes.subarray(0, 8), header!, ...turned(chunks), ...rest]);
};
