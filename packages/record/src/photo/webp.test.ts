import { expect, test } from 'vitest';
import { fromLetters, joined, viewOf } from './bytes.ts';
import { PLAIN } from './testing/pictures.ts';
import { lettersOf } from './testing/planted.ts';
import { cleanWebp } from './webp.ts';

const chunk = (name: string, content: Uint8Array): Uint8Array => {
  const head = new Uint8Array(8);
  head.set(fromLetters(name));
  viewOf(head).setUint32(4, content.length, true);
  return joined([head, content, new Uint8Array(content.length % 2)]);
};
const webp = (...chunks: readonly Uint8Array[]): Uint8Array =>
  chunk('RIFF', joined([fromLetters('WEBP'), ...chunks]));

/** Chunks of a plain picture from its name on. */
const from = (plain: Uint8Array, name: string): Uint8Array =>
  plain.subarray(lettersOf(plain).indexOf(name));
const VP8 = from(PLAIN.lossy, 'VP8 ');
const VP8L = from(PLAIN.lossless, 'VP8L');
const ALPH = from(PLAIN.clear, 'ALPH').subarray(0, 22);
/** 8 × 8 pixels: RFC 9649, section 2.7.1. */
const flags = (bits: number, reserved = 0) =>
  chunk('VP8X', Uint8Array.of(bits, reserved, reserved, reserved, 7, 0, 0, 7, 0, 0));
const NOTE = chunk('NOTE', fromLetters('taken at home'));
const frame = (...chunks: readonly Uint8Array[]) =>
  chunk('ANMF', joined([new Uint8Array(16), ...chunks]));
const ANIM = chunk('ANIM', new Uint8Array(6));

test('R90: a plain picture is all that there is of it', () => {
  expect(cleanWebp(webp(VP8, NOTE))).toEqual(webp(VP8));
  expect(cleanWebp(webp(VP8L, NOTE))).toEqual(webp(VP8L));
});

test('R90: flags say what is left, and what nobody reads is 0', () => {
  const noted = webp(flags(0x3c, 0xff), chunk('ICCP', fromLetters('none')), NOTE, ALPH, VP8, NOTE);
  expect(cleanWebp(noted)).toEqual(webp(flags(0x10), ALPH, VP8));
});

test('R90: each frame of a film is cleaned', () => {
  const film = webp(flags(0x06), ANIM, frame(ALPH, VP8, NOTE), NOTE, frame(VP8L, NOTE));
  expect(cleanWebp(film)).toEqual(webp(flags(0x02), ANIM, frame(ALPH, VP8), frame(VP8L)));
});

test('R93: how it is turned stays, whichever way it was written', () => {
  const tiff = 'II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x03\0\0\0\0\0\0\0';
  const only = fromLetters('MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x03\0\0\0\0\0\0');
  const turned = webp(flags(0x08), VP8, chunk('EXIF', only));
  for (const notes of [`${tiff}Home`, `Exif\0\0${tiff}Home`])
    expect(cleanWebp(webp(flags(0x08), VP8, chunk('EXIF', fromLetters(notes))))).toEqual(turned);
});

test('R93: its colour profile keeps its numbers', () => {
  const clean = lettersOf(cleanWebp(PLAIN.lossy)!);
  expect(clean).toContain('acsp');
  expect(clean).toContain('rXYZ');
  expect(clean).not.toMatch(/G\0o\0o\0g\0l\0e/);
});

test.each([
  ['no picture', webp(NOTE)],
  ['no chunk', webp()],
  ['flags cut short', webp(chunk('VP8X', new Uint8Array(4)), VP8)],
  ['a picture that is none', webp(chunk('VP8 ', fromLetters('taken at home')))],
  ['a film without a frame', webp(flags(0x02), ANIM)],
  ['a frame without a picture', webp(flags(0x02), ANIM, frame(VP8), frame(NOTE))],
  ['more said than there is', webp(VP8).with(4, 0xff)],
  ['chunks that do not fill it', webp(VP8, fromLetters('x'))],
  ['another kind of RIFF', chunk('RIFF', joined([fromLetters('WAVE'), VP8]))],
] as const)('R92: with %s it is refused', (_, wrong) => {
  expect(cleanWebp(wrong)).toBeNull();
});
