import type { Fault } from '@dryflat/engine/units';
import { isWholePicture, pictureType } from '../photo/picture.ts';
import type { GarmentRecord, Photo } from '../schema/index.ts';
import { fault } from './doubt.ts';

/** Faults of the photos: a picture that is not of the type that it says, or is not whole. */
export const photoFaults = (record: GarmentRecord): Fault[] =>
  (record.photos ?? []).flatMap((photo, at) => {
    const found = pictureType(photo.data);
    if (found !== photo.type) return [notOfType(photo, found, at)];
    return isWhole(photo) ? [] : [broken(photo, at)];
  });

const notOfType = ({ type }: Photo, found: Photo['type'] | null, at: number): Fault =>
  fault(
    'photo-not-of-type',
    `photos[${at}].type`,
    type,
    found === null
      ? 'its data do not begin as a picture of any type here'
      : `its data begin as ${found}`,
    found === null ? 'Attach the photo again.' : `Write "${found}".`,
  );

/** Letters of a picture that a message repeats. */
const SHOWN = 24;

const broken = ({ data }: Photo, at: number): Fault =>
  fault(
    'photo-broken',
    `photos[${at}].data`,
    `${data.slice(0, SHOWN)}…`,
    'it begins as a picture, but is not a whole one, so that it goes into no report and no file',
    'Attach the photo again, or remove it.',
  );

/** Records are checked as they are typed in; parts that did not change stay the same object. */
const known = new WeakMap<Photo, { readonly data: string; readonly whole: boolean }>();

const isWhole = (photo: Photo): boolean => {
  const { data } = photo;
  const was = known.get(photo);
  if (was?.data === data) return was.whole;
  const whole = isWholePicture(data);
  known.set(photo, { data, whole });
  return whole;
};
