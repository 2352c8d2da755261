import { expect, test } from 'vitest';
import { cleanJpeg } from './jpeg.ts';
import { PLAIN } from './testing/pictures.ts';
import { lettersOf } from './testing/planted.ts';

const text = (letters: string): number[] => [...letters].map((each) => each.charCodeAt(0));
const segment = (marker: number, data: readonly number[]): number[] => [
  0xff,
  marker,
  (data.length + 2) >> 8,
  (data.length + 2) & 0xff,
  ...data,
];
const SOI = [0xff, 0xd8];
const EOI = [0xff, 0xd9];
const TABLE = segment(0xdb, [0, ...Array<number>(64).fill(1)]);
const CODES = segment(0xc4, [0, 0, 1, ...Array<number>(14).fill(0), 7]);
/** A progressive frame of 8 × 8 grey pixels. */
const FRAME = segment(0xc2, [8, 0, 8, 0, 8, 1, 1, 0x11, 0]);
/** Coded data with a stuffed byte and a restart marker. */
const SCAN = [
  ...segment(0xda, [1, 1, 0, 0, 63, 0]),
  ...[0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56, 0xff, 0x00],
];
const EXIF = segment(0xe1, text('Exif\0\0II*\0GPSLatitude 51 28 38'));
const COMMENT = segment(0xfe, text('taken at home'));
const ADOBE = segment(0xee, text('Adobe\0\x64\0\0\0\0\x01'));
const HEAD = [...TABLE, ...CODES, ...FRAME];

const bytes = (...parts: readonly number[][]): Uint8Array => Uint8Array.from(parts.flat());

test('R90: notes between two scans go too; how colours are coded stays', () => {
  const noted = bytes(SOI, ADOBE, HEAD, SCAN, EXIF, COMMENT, CODES, SCAN, EOI);
  expect(cleanJpeg(noted)).toEqual(bytes(SOI, ADOBE, HEAD, SCAN, CODES, SCAN, EOI));
});

test('R90: fill bytes before a marker are no picture data', () => {
  expect(cleanJpeg(bytes(SOI, [0xff, 0xff], EXIF, HEAD, SCAN, EOI))).toEqual(
    bytes(SOI, HEAD, SCAN, EOI),
  );
});

test('R90: markers that nobody has given a meaning go with what they hold', () => {
  const strange = [0x02, 0xbf, 0xc8, 0xcc, 0xdc, 0xf0, 0xfd];
  const noted = strange.flatMap((marker) => segment(marker, text('taken at home')));
  expect(cleanJpeg(bytes(SOI, noted, HEAD, SCAN, EOI))).toEqual(bytes(SOI, HEAD, SCAN, EOI));
});

test.each([
  ['a table of another length', segment(0xdb, [0, ...text('taken at home')])],
  ['codes of another length', segment(0xc4, [0, ...Array<number>(16).fill(1), 7])],
  ['two frames', FRAME],
  ['a frame without a height', segment(0xc0, [8, 0, 0, 0, 8, 1, 1, 0x11, 0])],
  ['a restart interval with more in it', segment(0xdd, [0, 4, ...text('home')])],
  ['a second picture inside', SOI],
  ['arithmetic coding', segment(0xc9, [8, 0, 8, 0, 8, 1, 1, 0x11, 0])],
])('R92: with %s it is refused', (_, wrong) => {
  expect(cleanJpeg(bytes(SOI, HEAD, SCAN, EOI))).not.toBeNull();
  expect(cleanJpeg(bytes(SOI, HEAD, wrong, SCAN, EOI))).toBeNull();
});

test.each([
  ['without a frame', bytes(SOI, TABLE, CODES, SCAN, EOI)],
  ['without a scan', bytes(SOI, HEAD, EOI)],
  ['with its frame behind the scan', bytes(SOI, TABLE, CODES, SCAN, FRAME, EOI)],
  ['of another format', bytes(text('\x89PNG\r\n\x1a\n'))],
])('R92: %s it is refused', (_, wrong) => {
  expect(cleanJpeg(wrong)).toBeNull();
});

test('R93: of what a camera noted only how it was held stays: 36 bytes', () => {
  const orientation = [0x12, 1, 3, 0, 1, 0, 0, 0];
  const exif = (value: number) =>
    segment(0xe1, [
      ...text('Exif\0\0II*\0\x08\0\0\0\x02\0'),
      ...[0x10, 1, 2, 0, 5, 0, 0, 0, 0x26, 0, 0, 0],
      ...[...orientation, value, 0, 0, 0],
      ...[0, 0, 0, 0, ...text('Home\0')],
    ]);
  const clean = (value: number) => cleanJpeg(bytes(SOI, exif(value), HEAD, SCAN, EOI));
  expect(clean(6)).toEqual(
    bytes(
      SOI,
      segment(0xe1, [
        ...text('Exif\0\0MM\0*\0\0\0\x08\0\x01'),
        ...[1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0],
        ...[0, 0, 0, 0],
      ]),
      HEAD,
      SCAN,
      EOI,
    ),
  );
  for (const upright of [0, 1, 9]) expect(clean(upright)).toEqual(bytes(SOI, HEAD, SCAN, EOI));
});

test('R93: of a colour profile its numbers stay, each once; its names go, in every language', () => {
  const before = lettersOf(PLAIN.jpeg);
  const after = lettersOf(cleanJpeg(PLAIN.jpeg)!);
  expect(before).toMatch(/G\0o\0o\0g\0l\0e/);
  expect(after).not.toMatch(/G\0o\0o\0g\0l\0e/);
  const numbers = /XYZ \0{4}(?!\0+acsp)[\s\S]{12}/g;
  expect(after.match(numbers)).toEqual(before.match(numbers));
  expect(after.match(/para/g)).toHaveLength(1);
  expect(after.match(/mluc/g)).toHaveLength(1);
});
