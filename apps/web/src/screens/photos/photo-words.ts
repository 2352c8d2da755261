import type { Photo } from '@dryflat/record';

export const WHEN_WORDS: Readonly<Record<Photo['when'], string>> = {
  before: 'Before',
  pinned: 'Pinned',
  dried: 'Dried',
  other: 'Other',
};

export const WHEN_CHOICES = (Object.keys(WHEN_WORDS) as Photo['when'][]).map((value) => ({
  value,
  label: WHEN_WORDS[value],
}));

/** The most photos that a record holds. */
export const MOST_PHOTOS = 24;
