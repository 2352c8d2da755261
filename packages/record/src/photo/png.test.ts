import { zlibSync } from 'fflate';
import { expect, test } from 'vitest';
import { fromLetters, joined, viewOf } from './bytes.ts';
import { cleanPng } from './png.ts';
import { chunk, lettersOf, PNG_START } from './testing/planted.ts';

interface Header {
  readonly width: number;
  readonly height: number;
  readonly bits?: number;
  readonly colour?: number;
  readonly interlace?: number;
}

const header = ({ width, height, bits = 8, colour = 0, interlace = 0 }: Header): Uint8Array => {
  const content = new Uint8Array(13);
  viewOf(content).setUint32(0, width);
  viewOf(content).setUint32(4, height);
  content.set([bits, colour, 0, 0, interlace], 8);
  return chunk('IHDR', content);
};
const pixels = (rows: readonly (readonly number[])[]): Uint8Array =>
  chunk('IDAT', zlibSync(Uint8Array.from(rows.flat())));
const END = chunk('IEND', new Uint8Array());
const png = (...chunks: readonly Uint8Array[]): Uint8Array => joined([PNG_START, ...chunks, END]);

/** A grey square of 3 × 3 pixels; the first number of a row names its filter. */
const GREY = { width: 3, height: 3 };
const ROWS = [
  [0, 10, 20, 30],
  [1, 40, 50, 60],
  [4, 70, 80, 90],
];

const PACKED = zlibSync(Uint8Array.from(ROWS.flat()));

test('R92: a whole one is the same afterwards; of colours the plain numbers stay', () => {
  const gamma = chunk('gAMA', Uint8Array.of(0, 0, 0xb1, 0x8f));
  const whole = png(header(GREY), gamma, pixels(ROWS));
  expect(cleanPng(whole)).toEqual(whole);
});

test('R92: bits of a row fill bytes; rows of Adam7 are counted pass by pass', () => {
  const bits = png(header({ ...GREY, bits: 1 }), pixels(ROWS.map(() => [0, 0xa0])));
  expect(cleanPng(bits)).toEqual(bits);
  // ISO/IEC 15948, section 8.2: a square of 3 pixels has none in its second and third pass.
  const passes = [
    [0, 1],
    [0, 2],
    [0, 3, 4],
    [0, 5],
    [0, 6],
    [0, 7, 8, 9],
  ];
  const interlaced = png(header({ ...GREY, interlace: 1 }), pixels(passes));
  expect(cleanPng(interlaced)).toEqual(interlaced);
});

test.each([
  ['a byte of its pixels changed', (whole: Uint8Array) => whole.with(45, whole[45]! ^ 1)],
  ['no pixels', () => png(header(GREY))],
  ['a row too few', () => png(header(GREY), pixels(ROWS.slice(1)))],
  [
    'a filter that there is none',
    () => png(header(GREY), pixels([[5, 1, 2, 3], ...ROWS.slice(1)])),
  ],
  [
    'pixels that cannot be unpacked',
    () => png(header(GREY), chunk('IDAT', fromLetters('no zlib'))),
  ],
  ['a kind of colour that there is none', () => png(header({ ...GREY, colour: 1 }), pixels(ROWS))],
  [
    'bytes before the sum of its pixels',
    () =>
      png(
        header(GREY),
        chunk('IDAT', joined([PACKED.subarray(0, -4), fromLetters('home'), PACKED.subarray(-4)])),
      ),
  ],
  [
    'a sum of its pixels that is wrong',
    () => png(header(GREY), chunk('IDAT', PACKED.with(-1, PACKED.at(-1)! ^ 1))),
  ],
  [
    'a palette of broken colours',
    () => png(header({ ...GREY, colour: 3 }), chunk('PLTE', fromLetters('home')), pixels(ROWS)),
  ],
  ['a palette missing', () => png(header({ ...GREY, colour: 3 }), pixels(ROWS))],
  ['no width', () => png(header({ ...GREY, width: 0 }), pixels(ROWS))],
  [
    'more pixels than any photo',
    () => png(header({ width: 9999, height: 9999, bits: 16 }), pixels(ROWS)),
  ],
  ['two headers', () => png(header(GREY), header(GREY), pixels(ROWS))],
  [
    'a needed chunk that nobody knows',
    () => png(header(GREY), chunk('HOME', fromLetters('x')), pixels(ROWS)),
  ],
  ['its chunks not beginning with the header', () => png(pixels(ROWS), header(GREY))],
] as const)('R92: with %s it is refused', (_, wrong) => {
  const whole = png(header(GREY), pixels(ROWS));
  expect(cleanPng(whole)).toEqual(whole);
  expect(cleanPng(wrong(whole))).toBeNull();
});

test('R93: how it is turned stays, in 38 bytes, with a sum that is right', () => {
  const tiff = fromLetters('II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x08\0\0\0\0\0\0\0Home');
  const noted = png(header(GREY), chunk('eXIf', tiff), pixels(ROWS));
  const clean = cleanPng(noted)!;
  const at = lettersOf(clean).indexOf('eXIf') - 4;
  const only = fromLetters('MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x08\0\0\0\0\0\0');
  expect(clean.subarray(at, at + 38)).toEqual(chunk('eXIf', only));
  expect(clean.length).toBe(noted.length - 4);
});

const CLEAR = chunk('tRNS', Uint8Array.of(0, 20));

test.each([
  [
    'bytes behind the end of its pixels',
    png(header(GREY), CLEAR, chunk('IDAT', joined([PACKED, fromLetters('home')]))),
  ],
  [
    'a chunk behind the end of its pixels',
    png(header(GREY), CLEAR, pixels(ROWS), chunk('IDAT', fromLetters('home'))),
  ],
  [
    'pixels again behind another chunk',
    png(header(GREY), CLEAR, pixels(ROWS), chunk('tEXt', fromLetters('a')), pixels(ROWS)),
  ],
  ['a palette, of grey', png(header(GREY), chunk('PLTE', fromLetters('hom')), CLEAR, pixels(ROWS))],
  ['a clear colour twice', png(header(GREY), CLEAR, CLEAR, pixels(ROWS))],
  [
    'colours behind the pixels',
    png(header(GREY), CLEAR, pixels(ROWS), chunk('sRGB', Uint8Array.of(1))),
  ],
] as const)('R90: %s is taken out, and the picture stays', (_, planted) => {
  expect(cleanPng(planted)).toEqual(png(header(GREY), CLEAR, pixels(ROWS)));
});

interface Unclear {
  readonly shape: Header;
  readonly rows: readonly (readonly number[])[];
  readonly wrong: readonly (readonly number[])[];
}
const UNCLEAR: Readonly<Record<string, Unclear>> = {
  'of grey': { shape: GREY, rows: ROWS, wrong: [[20], [0, 20, 30], [1, 0]] },
  'of grey with its own': {
    shape: { ...GREY, colour: 4 },
    rows: ROWS.map((row) => [...row, 1, 2, 3]),
    wrong: [[0, 20]],
  },
  'of a palette': {
    shape: { ...GREY, colour: 3 },
    rows: ROWS.map(() => [0, 0, 1, 0]),
    wrong: [[1, 2, 3], []],
  },
};
const PALETTE = chunk('PLTE', Uint8Array.of(1, 2, 3, 4, 5, 6));

test.each(Object.entries(UNCLEAR))(
  'R90: a clear colour that is none, %s, is taken out',
  (_, of) => {
    const palette = of.shape.colour === 3 ? [PALETTE] : [];
    const whole = png(header(of.shape), ...palette, pixels(of.rows));
    expect(cleanPng(whole)).toEqual(whole);
    for (const each of of.wrong) {
      const clear = chunk('tRNS', Uint8Array.from(each));
      expect(cleanPng(png(header(of.shape), ...palette, clear, pixels(of.rows)))).toEqual(whole);
    }
  },
);

test('R93: which colours of a palette are clear stays', () => {
  const { shape, rows } = UNCLEAR['of a palette']!;
  const clear = chunk('tRNS', Uint8Array.of(0, 255));
  const whole = png(header(shape), PALETTE, clear, pixels(rows));
  expect(cleanPng(whole)).toEqual(whole);
});

test('R90: a film keeps its first picture', () => {
  const frames = png(
    header(GREY),
    chunk('acTL', new Uint8Array(8)),
    pixels(ROWS),
    chunk('fcTL', new Uint8Array(26)),
    chunk('fdAT', fromLetters('home')),
  );
  expect(cleanPng(frames)).toEqual(png(header(GREY), pixels(ROWS)));
});
