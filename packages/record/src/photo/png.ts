import { unzlibSync } from 'fflate';
import { fromLetters, joined, lettersAt, viewOf } from './bytes.ts';
import { onlyOrientation } from './orientation.ts';

/** ISO/IEC 15948, section 5.2. */
const SIGNATURE = '\x89PNG\r\n\x1a\n';

/** Chunks that say what colours mean, and their lengths, bytes: section 11.3. */
const OF_COLOURS: Readonly<Record<string, number>> = { gAMA: 4, cHRM: 32, sRGB: 1, cICP: 4 };
/** Chunks in capitals that are known; with any other the picture may be something else: section 5.4. */
const NEEDED: ReadonlySet<string> = new Set(['IHDR', 'PLTE', 'IDAT', 'IEND']);

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

/** A chunk in capitals has to be understood. */
const isUnknown = ({ type }: Chunk): boolean => type.charAt(0) <= 'Z' && !NEEDED.has(type);

interface Shape {
  readonly width: number;
  readonly height: number;
  readonly colour: number;
  readonly samples: number;
  /** Of a sample. */
  readonly bits: number;
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
  if (header.length !== 13) return null;
  const [width, height] = [viewOf(header).getUint32(0), viewOf(header).getUint32(4)];
  const [bits = 0, colour = 0, packing, filter, interlace = 0] = header.subarray(8);
  const [samples, allowed] = COLOURS[colour] ?? [0, []];
  const known = allowed.includes(bits) && packing === 0 && filter === 0 && interlace <= 1;
  return known && isSide(width) && isSide(height)
    ? { width, height, colour, samples, bits, interlaced: interlace === 1 }
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
const rowsOf = ({ width, height, samples, bits, interlaced }: Shape) =>
  (interlaced ? PASSES : ([[0, 0, 1, 1]] as const))
    .map(([x, y, dx, dy]) => ({
      across: Math.ceil((width - x) / dx),
      rows: Math.ceil((height - y) / dy),
    }))
    .filter(({ across, rows }) => across > 0 && rows > 0)
    .map(({ across, rows }) => ({ rows, bytes: 1 + Math.ceil((across * samples * bits) / 8) }));

const unpacked = (packed: Uint8Array, length: number): Uint8Array | null => {
  try {
    return unzlibSync(packed, { out: new Uint8Array(length) });
  } catch {
    return null;
  }
};

/** Adler-32, as it stands behind what is packed: RFC 1950, section 2.2. */
const adlerOf = (bytes: Uint8Array): readonly number[] => {
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65_521;
    b = (b + a) % 65_521;
  }
  return [b >> 8, b & 0xff, a >> 8, a & 0xff];
};

/** Four bytes that stand within packed ones as their sum does are one in 2³²; somebody may put them there. */
const MOST_SUMS = 8;

/** What is packed up to its end and the sum right behind it; null where there is none. */
const upToSum = (packed: Uint8Array, pixels: Uint8Array): Uint8Array | null => {
  const sum = adlerOf(pixels);
  let seen = 0;
  for (let at = packed.indexOf(sum[0]!); at >= 0; at = packed.indexOf(sum[0]!, at + 1)) {
    if (!sum.every((byte, k) => packed[at + k] === byte)) continue;
    // A byte less cannot be unpacked, so that nothing stands before the sum.
    if (unpacked(packed.subarray(0, at + 4), pixels.length))
      return unpacked(packed.subarray(0, at + 3), pixels.length)
        ? null
        : packed.subarray(0, at + 4);
    seen += 1;
    if (seen === MOST_SUMS) return null;
  }
  return null;
};

/** What is packed, up to its end, where it holds every row of the picture, each with a filter that there is. */
const onlyPixels = (packed: Uint8Array, shape: Shape): Uint8Array | null => {
  const passes = rowsOf(shape);
  const length = passes.reduce((sum, { rows, bytes }) => sum + rows * bytes, 0);
  const pixels = length > MOST_UNPACKED ? null : unpacked(packed, length);
  if (pixels?.length !== length) return null;
  let at = 0;
  for (const { rows, bytes } of passes)
    for (let row = 0; row < rows; row += 1, at += bytes) if (pixels[at]! > 4) return null;
  return upToSum(packed, pixels);
};

const chunkOf = (type: string, content: Uint8Array): Uint8Array => {
  const chunk = new Uint8Array(12 + content.length);
  const view = viewOf(chunk);
  view.setUint32(0, content.length);
  chunk.set(fromLetters(type), 4);
  chunk.set(content, 8);
  view.setUint32(8 + content.length, crcOf(chunk.subarray(4, -4)));
  return chunk;
};

/** Colours that a pixel can name: section 11.2.2. */
const isPalette = (content: Uint8Array, { bits }: Shape): boolean =>
  content.length > 0 && content.length % 3 === 0 && content.length <= 3 * 2 ** bits;

/** What is clear, by the kind of colour: a share for each of the palette, or one colour: section 11.3.1.1. */
const isClear = (content: Uint8Array, shape: Shape, colours: number): boolean => {
  const { colour, samples, bits } = shape;
  if (colour === 3) return content.length > 0 && content.length <= colours;
  if (colour > 3 || content.length !== 2 * samples) return false;
  const view = viewOf(content);
  return Array.from({ length: samples }, (_, k) => view.getUint16(2 * k)).every(
    (each) => each < 2 ** bits,
  );
};

const turned = (chunks: readonly Chunk[]): Uint8Array[] => {
  const found = chunks.find(({ type }) => type === 'eXIf');
  const tiff = found && onlyOrientation(found.content);
  return tiff ? [chunkOf('eXIf', tiff)] : [];
};

/** So many bytes of what is packed, in the chunks that it came in. */
const upTo = (length: number, run: readonly Chunk[]): Uint8Array[] => {
  let left = length;
  return run.flatMap(({ content, whole }) => {
    const taken = content.subarray(0, left);
    left -= taken.length;
    if (taken.length === 0) return [];
    return [taken.length === content.length ? whole : chunkOf('IDAT', taken)];
  });
};

/** Of the chunks before the pixels those that say what the colours are: each once, and of its length. */
const coloursIn = (before: readonly Chunk[], shape: Shape): readonly Chunk[] => {
  const colours = (before.find(({ type }) => type === 'PLTE')?.content.length ?? 0) / 3;
  return before.filter(({ type, content }, k) => {
    if (before.findIndex((each) => each.type === type) !== k) return false;
    if (type === 'PLTE') return shape.colour === 3 && isPalette(content, shape);
    if (type === 'tRNS') return isClear(content, shape, colours);
    return content.length === OF_COLOURS[type];
  });
};

/**
 * A PNG with what it is decoded from, and nothing else: no texts, no day, no notes of a camera but how
 * it is turned, nothing behind its end or that of its pixels. Of colours the plain numbers stay; a packed
 * profile, which may name a device, goes. The picture itself is the same, byte for byte. Null where `bytes`
 * is no whole PNG.
 */
export const cleanPng = (bytes: Uint8Array): Uint8Array | null => {
  const chunks = chunksOf(bytes);
  const [header, ...others] = chunks ?? [];
  const shape = header?.type === 'IHDR' ? shapeOf(header.content) : null;
  const end = others.at(-1);
  if (!chunks || !header || !end || shape === null || end.content.length > 0) return null;
  const is = (type: string) => (each: Chunk) => each.type === type;
  if (others.some(is('IHDR')) || others.some(isUnknown)) return null;
  const first = others.findIndex(is('IDAT'));
  if (first < 0) return null;
  const colours = coloursIn(others.slice(0, first), shape);
  const behind = others.slice(first);
  const run = behind.slice(
    0,
    behind.findIndex((each) => each.type !== 'IDAT'),
  );
  if (shape.colour === 3 && (!colours.some(is('PLTE')) || others.filter(is('PLTE')).length > 1))
    return null;
  if (![header, ...colours, ...run, end].every(isSound)) return null;
  const packed = joined(run.map(({ content }) => content));
  const pixels = onlyPixels(packed, shape);
  if (pixels === null) return null;
  return joined([
    bytes.subarray(0, 8),
    header.whole,
    ...turned(chunks),
    ...colours.map(({ whole }) => whole),
    ...upTo(pixels.length, run),
    end.whole,
  ]);
};
