import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { jpegSegments, withoutNotes } from './without-notes.ts';

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
const TABLE = segment(0xdb, [0, 1, 2, 3]);
/** Coded data with a stuffed byte, a restart marker, and a second scan as progressive pictures have. */
const SCANS = [
  ...segment(0xda, [1, 1, 0, 0, 63, 0]),
  ...[0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56],
  ...segment(0xda, [1, 1, 0, 1, 5, 0]),
  ...[0x78, 0xff, 0x00],
];
const JFIF = segment(0xe0, text('JFIF\0\x01\x02'));
const EXIF = segment(0xe1, text('Exif\0\0II*\0GPSLatitude 51 28 38'));
const XMP = segment(0xe1, text('http://ns.adobe.com/xap/1.0/\0<exif:GPSLongitude>'));
const ICC = segment(0xe2, text('ICC_PROFILE\0'));
const ADOBE = segment(0xee, text('Adobe\0'));
const COMMENT = segment(0xfe, text('taken at home'));

const bytes = (...parts: readonly number[][]): Uint8Array => Uint8Array.from(parts.flat());

test('PH1: notes of the camera, comments and what is appended go; the picture stays byte for byte', () => {
  const noted = bytes(SOI, JFIF, EXIF, XMP, ICC, COMMENT, TABLE, SCANS, EOI, text('trailing film'));
  expect(withoutNotes(noted)).toEqual(bytes(SOI, TABLE, SCANS, EOI));
});

test('PH1: notes between two scans go too; how colours are coded stays', () => {
  const noted = bytes(SOI, ADOBE, TABLE, SCANS, EXIF, SCANS, EOI);
  expect(withoutNotes(noted)).toEqual(bytes(SOI, ADOBE, TABLE, SCANS, SCANS, EOI));
});

test('PH1: fill bytes before a marker are no picture data', () => {
  expect(withoutNotes(bytes(SOI, [0xff, 0xff], EXIF, TABLE, SCANS, EOI))).toEqual(
    bytes(SOI, TABLE, SCANS, EOI),
  );
});

test('PH1: once clean, cleaning changes nothing', () => {
  const clean = withoutNotes(bytes(SOI, EXIF, TABLE, SCANS, EOI))!;
  expect(withoutNotes(clean)).toEqual(clean);
  expect(jpegSegments(clean)!.map(({ marker }) => marker)).toEqual([0xd8, 0xdb, 0xda, 0xda, 0xd9]);
});

test('PH1: what is no whole JPEG is refused', () => {
  const whole = bytes(SOI, EXIF, TABLE, SCANS, EOI);
  for (const cut of [0, 1, 3, 10, whole.length - 2])
    expect(withoutNotes(whole.subarray(0, cut))).toBeNull();
  expect(withoutNotes(bytes(text('\x89PNG\r\n\x1a\n')))).toBeNull();
});

test('PH1: no bytes make it throw or hang, and no application segment is left', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (noise) => {
      const clean = withoutNotes(Uint8Array.from([...SOI, ...noise, ...EOI]));
      for (const { marker } of (clean && jpegSegments(clean)) ?? [])
        expect(marker >= 0xe0 && marker <= 0xef && marker !== 0xee).toBe(false);
    }),
  );
});
