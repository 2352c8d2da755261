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
