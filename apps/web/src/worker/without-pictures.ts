import type { GarmentRecord } from '@dryflat/record';

/** A record without its photos: megabytes that no calculation needs, and that a worker would be sent. */
export const withoutPictures = ({ photos: _, ...record }: GarmentRecord): GarmentRecord => record;
