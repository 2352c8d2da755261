import { lettersAt, viewOf } from './bytes.ts';

/** Exif 2.32, section 4.6.4, tag 0x0112; its type is SHORT. */
const ORIENTATION = 0x0112;
const SHORT = 3;

/** Header, one directory with one entry, and no directory after it: TIFF 6.0, section 2. */
const LENGTH = 26;
const HEADER = 8;
const ENTRY = 12;

const entriesOf = (view: DataView, little: boolean): number[] => {
  const directory = view.getUint32(4, little);
  if (directory < HEADER || directory + 2 > view.byteLength) return [];
  const count = view.getUint16(directory, little);
  const entries = Array.from({ length: count }, (_, k) => directory + 2 + ENTRY * k);
  return entries.filter((at) => at + ENTRY <= view.byteLength);
};

/** How a camera was held, 1 to 8; 1 where its notes do not say. */
const orientationOf = (tiff: Uint8Array): number => {
  if (tiff.length < LENGTH) return 1;
  const order = lettersAt(tiff, 0, 2);
  if (order !== 'II' && order !== 'MM') return 1;
  const little = order === 'II';
  const view = viewOf(tiff);
  const found = entriesOf(view, little).find(
    (at) => view.getUint16(at, little) === ORIENTATION && view.getUint16(at + 2, little) === SHORT,
  );
  const value = found === undefined ? 1 : view.getUint16(found + 8, little);
  return value >= 1 && value <= 8 ? value : 1;
};

/**
 * Of a camera's notes (a TIFF, as Exif has it) what the picture is turned by, as a TIFF of its own,
 * no longer than the notes; null for a picture that stands upright.
 */
export const onlyOrientation = (tiff: Uint8Array): Uint8Array | null => {
  const orientation = orientationOf(tiff);
  if (orientation === 1) return null;
  const only = new Uint8Array(LENGTH);
  const view = viewOf(only);
  only.set([0x4d, 0x4d, 0, 42]);
  view.setUint32(4, HEADER);
  view.setUint16(8, 1);
  view.setUint16(10, ORIENTATION);
  view.setUint16(12, SHORT);
  view.setUint32(14, 1);
  view.setUint16(18, orientation);
  return only;
};
