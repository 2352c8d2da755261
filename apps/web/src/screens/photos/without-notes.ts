/**
 * JPEG markers (ITU-T T.81, table B.1). Segments of an application (APP0 to APP15) and comments hold
 * what a camera notes: place, time, device, a small second picture.
 */
const [SOI, EOI, SOS, APP0, APP14, APP15, COM] = [0xd8, 0xd9, 0xda, 0xe0, 0xee, 0xef, 0xfe];
/** TEM and RST0 to RST7 stand alone, without a length. */
const standsAlone = (marker: number): boolean =>
  marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

interface Segment {
  readonly marker: number;
  /** From the marker's first byte to the end, coded picture data after a start of scan included. */
  readonly from: number;
  readonly to: number;
}

/** Where the coded data that begins at `from` ends: at the next marker that is none of its own. */
const scanEnd = (bytes: Uint8Array, from: number): number => {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    const next = bytes[at + 1]!;
    if (bytes[at] === 0xff && next !== 0 && next !== 0xff && !standsAlone(next)) return at;
  }
  return bytes.length;
};

/** The segment that begins at `at`; null where the bytes are no JPEG there. */
const segmentAt = (bytes: Uint8Array, start: number): Segment | null => {
  let at = start;
  if (bytes[at] !== 0xff) return null;
  // Any marker may be preceded by fill bytes.
  while (bytes[at + 1] === 0xff) at += 1;
  const marker = bytes[at + 1];
  if (marker === undefined) return null;
  if (marker === SOI || marker === EOI || standsAlone(marker))
    return { marker, from: at, to: at + 2 };
  const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
  const end = at + 2 + length;
  if (length < 2 || end > bytes.length) return null;
  return { marker, from: at, to: marker === SOS ? scanEnd(bytes, end) : end };
};

/** Segments of a JPEG up to its end; null where it is none, or is cut off. */
export const jpegSegments = (bytes: Uint8Array): readonly Segment[] | null => {
  const segments: Segment[] = [];
  for (let at = 0; at < bytes.length; ) {
    const segment = segmentAt(bytes, at);
    if (segment === null || (segments.length === 0) !== (segment.marker === SOI)) return null;
    segments.push(segment);
    if (segment.marker === EOI) return segments;
    at = segment.to;
  }
  return null;
};

/** Adobe's APP14 says how the colours are coded: without it they may turn out wrong. */
const isNote = ({ marker }: Segment): boolean =>
  (marker >= APP0 && marker <= APP15 && marker !== APP14) || marker === COM;

/**
 * A JPEG without its notes: every application segment but Adobe's, every comment, and whatever is
 * appended behind its end. The picture itself is the same, byte for byte. Null where `bytes` is no
 * whole JPEG.
 */
export const withoutNotes = (bytes: Uint8Array): Uint8Array | null => {
  const kept = jpegSegments(bytes)?.filter((segment) => !isNote(segment));
  if (kept === undefined) return null;
  const clean = new Uint8Array(kept.reduce((sum, { from, to }) => sum + to - from, 0));
  let at = 0;
  for (const { from, to } of kept) {
    clean.set(bytes.subarray(from, to), at);
    at += to - from;
  }
  return clean;
};
