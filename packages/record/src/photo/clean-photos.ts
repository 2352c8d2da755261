import type { GarmentRecord } from '../schema/index.ts';
import { cleanPicture } from './picture.ts';

export interface CleanPhotos {
  readonly record: GarmentRecord;
  /** Pictures that something was taken out of. */
  readonly cleaned: number;
}

/**
 * A record whose pictures hold nothing beside what they show. One that cannot be read stays as it is:
 * `faultsOf` names it, and it goes out nowhere.
 */
export const withCleanPhotos = (record: GarmentRecord): CleanPhotos => {
  let cleaned = 0;
  const photos = record.photos?.map((photo) => {
    const data = cleanPicture(photo.data)?.data ?? photo.data;
    if (data === photo.data) return photo;
    cleaned += 1;
    return { ...photo, data };
  });
  return photos === undefined || cleaned === 0
    ? { record, cleaned }
    : { record: { ...record, photos }, cleaned };
};
