import type { Photo } from '../schema/index.ts';
import { fromBase64, toBase64 } from './bytes.ts';
import { cleanJpeg } from './jpeg.ts';
import { cleanPng } from './png.ts';
import { cleanWebp } from './webp.ts';

/** A picture without anything that is not needed to show it. */
export type CleanPicture = Pick<Photo, 'type' | 'data'>;

interface Format {
  /** Whether a file that begins like this (its bytes as letters) is of the format. */
  readonly begins: (header: string) => boolean;
  readonly clean: (bytes: Uint8Array) => Uint8Array | null;
}

/**
 * How a file of the type begins, byte by byte. JPEG: ISO/IEC 10918-1, B.1.1.3 (SOI, then a marker).
 * PNG: ISO/IEC 15948, 5.2. WebP: RFC 9649, section 2.4 (bytes 4 to 7 are its length).
 */
const FORMATS: Readonly<Record<Photo['type'], Format>> = {
  'image/jpeg': { begins: (header) => header.startsWith('\xff\xd8\xff'), clean: cleanJpeg },
  'image/png': { begins: (header) => header.startsWith('\x89PNG\r\n\x1a\n'), clean: cleanPng },
  'image/webp': {
    begins: (header) => header.startsWith('RIFF') && header.startsWith('WEBP', 8),
    clean: cleanWebp,
  },
};

const TYPES = Object.keys(FORMATS) as Photo['type'][];

/** Letters of base64 that hold the first 12 bytes, in which all three formats say what they are. */
const HEADER_LETTERS = 16;

/** What a picture in base64 begins as, or null. */
export const pictureType = (data: string): Photo['type'] | null => {
  const header = fromBase64(data.slice(0, HEADER_LETTERS));
  const letters = header === null ? '' : String.fromCharCode(...header);
  return TYPES.find((type) => FORMATS[type].begins(letters)) ?? null;
};

/**
 * A picture in base64 with what it is decoded from and nothing else: no place, time or device, no
 * comment, no second picture, nothing behind its end. Cleaning twice is cleaning once, and the picture
 * never grows. Null where it is no whole JPEG, PNG or WebP. Never throws.
 */
export const cleanPicture = (data: string): CleanPicture | null => {
  const type = pictureType(data);
  const clean = cleanBytes(type, data);
  return type === null || clean === null ? null : { type, data: toBase64(clean) };
};

/** Whether there is a clean picture of it, at the half of the cost. */
export const isWholePicture = (data: string): boolean =>
  cleanBytes(pictureType(data), data) !== null;

const cleanBytes = (type: Photo['type'] | null, data: string): Uint8Array | null => {
  const bytes = type === null ? null : fromBase64(data);
  return type === null || bytes === null ? null : FORMATS[type].clean(bytes);
};
