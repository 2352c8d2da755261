import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultsOf } from '../check/faults-of.ts';
import { sample } from '../malformed/sample.ts';
import { readRecord } from '../read/read-record.ts';
import type { GarmentRecord, Photo } from '../schema/index.ts';
import { writeRecord } from '../write/write-record.ts';
import { fromBase64, toBase64 } from './bytes.ts';
import { cleanFile } from './clean-file.ts';
import { PLAIN, type Plain, TYPE_OF } from './testing/pictures.ts';
import { lettersOf, PLANTED, plantedAll } from './testing/planted.ts';

const KINDS = Object.keys(PLAIN) as Plain[];

const photo = (id: string, type: Photo['type'], bytes: Uint8Array): Photo => ({
  id,
  when: 'dried',
  caption: `Photo ${id}`,
  type,
  widthPx: 8,
  heightPx: 8,
  data: toBase64(bytes),
});

/** A record whose pictures carry the planted text in every place; the last is cut off behind it. */
const planted = (): GarmentRecord => ({
  ...sample(),
  photos: [
    ...KINDS.map((kind) => photo(kind, TYPE_OF[kind], plantedAll(kind, PLANTED))),
    photo('cut', 'image/jpeg', plantedAll('jpeg', PLANTED).subarray(0, 700)),
  ],
  report: { changes: '', fitNotes: '', photos: [...KINDS, 'cut'], body: false },
});

/** Every text of a file that holds the planted one, in base64 or as it is. */
const told = (json: unknown): string[] =>
  typeof json === 'string'
    ? [json, lettersOf(fromBase64(json) ?? new Uint8Array())].filter((each) =>
        each.includes(PLANTED),
      )
    : typeof json === 'object' && json !== null
      ? Object.values(json).flatMap(told)
      : [];

describe('a record that is read', () => {
  it('R94: its pictures are cleaned, that is told, and one that cannot be read is a fault', () => {
    const text = writeRecord(planted());
    const read = readRecord(text);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { record, notices, original } = read.value;
    expect(told(JSON.parse(text))).toHaveLength(KINDS.length + 1);
    expect(told(record.photos!.slice(0, -1))).toEqual([]);
    expect(notices).toEqual([
      'Taken out of 5 pictures: what a camera or a program wrote beside it, such as place and time.',
    ]);
    expect(original).toBe(text);
    expect(faultsOf(record).map(({ code, field }) => [code, field])).toEqual([
      ['photo-broken', `photos[${KINDS.length}].data`],
    ]);
  });

  it('R94: one that is clean is the same object of the same text', () => {
    const once = readRecord(writeRecord(planted()));
    const text = once.ok ? writeRecord(once.value.record) : '';
    const again = readRecord(text);
    expect(again.ok && writeRecord(again.value.record)).toBe(text);
    expect(again.ok && again.value.notices).toEqual([]);
  });
});

describe('a file that goes out', () => {
  it('R95: holds no planted text, and says what is left out', () => {
    const { text, leftOut } = cleanFile(writeRecord(planted()));
    expect(told(JSON.parse(text))).toEqual([]);
    expect(leftOut).toBe(1);
    const photos: Photo[] = JSON.parse(text).photos;
    expect(photos.map(({ data }) => data !== '')).toEqual([...KINDS.map(() => true), false]);
    expect(cleanFile(text)).toEqual({ text, leftOut: 0 });
  });

  it('R95: of a newer version everything else stays byte for byte, wherever its pictures are', () => {
    const data = toBase64(plantedAll('png', PLANTED));
    const escaped = data.replaceAll('/', '\\/');
    const newer = (picture: string, unknown: string) =>
      `\uFEFF{ "photos":[{"data":"${unknown}", "type" : "image/avif"}],\n"swatches": {"a \\" \\\\": ["${picture}"]}, "n": 1.50 }`;
    const { text, leftOut } = cleanFile(newer(escaped, 'AAAAHGZ0eXBhdmlm'));
    const { data: clean } = JSON.parse(cleanFile(`{"data":"${data}"}`).text);
    expect(lettersOf(fromBase64(clean)!)).not.toContain(PLANTED);
    expect(text).toBe(newer(clean, ''));
    expect(leftOut).toBe(1);
  });

  it('R95: any JSON without a picture is the same text', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(cleanFile(text)).toEqual({ text, leftOut: 0 });
      }),
    );
  });
});
