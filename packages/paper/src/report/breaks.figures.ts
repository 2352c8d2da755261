import { forecast } from '@dryflat/engine/garment';
import {
  askForecast,
  findExample,
  type GarmentRecord,
  type Photo,
  readRecord,
  writeRecord,
} from '@dryflat/record';
import { cleanFile, cleanPicture, fromBase64, toBase64 } from '@dryflat/record/photo';
import { anyMutated, lettersOf, PLANTED } from '@dryflat/record/photo/testing';
import fc from 'fast-check';
import { everyFile } from '../testing/every-file.ts';
import { reportOf } from './report.ts';

const SEED = 20_311_402;

/** The most that a record holds. */
const BATCH = 24;

const batches = (pictures: readonly Uint8Array[]): Uint8Array[][] =>
  Array.from({ length: Math.ceil(pictures.length / BATCH) }, (_, k) =>
    pictures.slice(BATCH * k, BATCH * (k + 1)),
  );

const example = findExample('hayloft-pullover')!.record;
const asked = askForecast(example);
if (!asked.ok) throw new Error(JSON.stringify(asked.faults));
const made = forecast(asked.value);

const withPictures = (pictures: readonly Uint8Array[]): GarmentRecord => {
  const photos = pictures.map(
    (bytes, k): Photo => ({
      id: `${k}`,
      when: 'dried',
      caption: '',
      type: 'image/jpeg',
      widthPx: 8,
      heightPx: 8,
      data: toBase64(bytes),
    }),
  );
  const report = { changes: '', fitNotes: '', photos: photos.map(({ id }) => id), body: false };
  return { ...example, photos, report };
};

const opened = (text: string): GarmentRecord => {
  const read = readRecord(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value.record;
};

const picturesOf = (text: string): Uint8Array[] =>
  JSON.parse(text).photos.map(({ data }: Photo) => fromBase64(data)!);

/** Everything that goes out of a record: as it was kept before pictures were cleaned, and as it is read now. */
const goneOut = async (kept: GarmentRecord): Promise<Uint8Array[]> => {
  const text = writeRecord(kept);
  const read = opened(text);
  const reports = await Promise.all(
    [kept, read].map(async (record) => {
      const report = reportOf(record, { forecast: made });
      if (!report.ok) throw new Error(JSON.stringify(report.faults));
      return (await everyFile(report.value)).bytes.map(([, bytes]) => bytes);
    }),
  );
  const files = [text, writeRecord(read), text.replace(/"version": \d+/, '"version": 99')];
  return [...reports.flat(), ...files.flatMap((file) => picturesOf(cleanFile(file).text))];
};

const holding = (pictures: readonly Uint8Array[]): number =>
  pictures.filter((bytes) => lettersOf(bytes).includes(PLANTED)).length;

export async function* figures(full: boolean) {
  const count = full ? 5000 : 200;
  const pictures = fc.sample(anyMutated, { numRuns: count, seed: SEED });
  const shown = pictures.filter((bytes) => cleanPicture(toBase64(bytes)) !== null).length;
  let found = 0;
  for (const batch of batches(pictures)) found += holding(await goneOut(withPictures(batch)));
  yield {
    name: `mutated pictures of ${count} in which the planted place and time can be read before`,
    value: holding(pictures),
    unit: '',
    goal: { least: count / 2 },
  };
  yield {
    name: `of ${count} mutated pictures, those that can be shown still`,
    value: shown,
    unit: '',
    goal: { least: count / 10 },
  };
  yield {
    name: `planted places and times found in every file that ${count} mutated pictures go out in`,
    value: found,
    unit: '',
    goal: { exactly: 0 },
  };
}
