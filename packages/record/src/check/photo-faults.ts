import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, Photo } from '../schema/index.ts';
import { fault } from './doubt.ts';

/** Letters of base64 that hold the first 12 bytes, in which all three formats say what they are. */
const HEADER_LETTERS = 16;

/**
 * How a file of the type begins, byte by byte. JPEG: ISO/IEC 10918-1, B.1.1.3 (SOI, then a marker).
 * PNG: ISO/IEC 15948, 5.2. WebP: RFC 9649, section 2.4 (bytes 4 to 7 are its length).
 */
const BEGINS: Readonly<Record<Photo['type'], (header: string) => boolean>> = {
  'image/jpeg': (header) => header.startsWith('\xff\xd8\xff'),
  'image/png': (header) => header.startsWith('\x89PNG\r\n\x1a\n'),
  'image/webp': (header) => header.startsWith('RIFF') && header.startsWith('WEBP', 8),
};

const TYPES = Object.keys(BEGINS) as Photo['type'][];

/** Faults of the photos: a picture that is not of the type that it says. */
export const photoFaults = (record: GarmentRecord): Fault[] =>
  (record.photos ?? []).flatMap(({ type, data }, at) => {
    const found = typeOf(data);
    return found === type
      ? []
      : [
          fault(
            'photo-not-of-type',
            `photos[${at}].type`,
            type,
            found === null
              ? 'its data do not begin as a picture of any type here'
              : `its data begin as ${found}`,
            found === null ? 'Attach the photo again.' : `Write "${found}".`,
          ),
        ];
  });

const typeOf = (data: string): Photo['type'] | null => {
  const header = atob(data.slice(0, HEADER_LETTERS));
  return TYPES.find((type) => BEGINS[type](header)) ?? null;
};
