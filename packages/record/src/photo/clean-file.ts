import { cleanPicture, pictureType } from './picture.ts';

export interface CleanFile {
  readonly text: string;
  /** Pictures that could not be looked through; in the text they are empty. */
  readonly leftOut: number;
}

/** A text of JSON with its quotes. Outside of texts there are no quotes, so none begins within another. */
const TEXTS = /"[^"\\]*(?:\\.[^"\\]*)*"/g;

const photosIn = (json: unknown): readonly unknown[] => {
  const photos = (json as { photos?: unknown } | null)?.photos;
  return Array.isArray(photos) ? photos.map((photo) => photo?.data) : [];
};

/**
 * The text of a record's file as it may go out: every picture in it clean, wherever a newer version may
 * have put it, and all else byte for byte. What stands for a photo, or begins as a picture, and cannot
 * be looked through is emptied. Fails on text that is no JSON, as `JSON.parse` does.
 */
export const cleanFile = (text: string): CleanFile => {
  const photos = new Set(photosIn(JSON.parse(text.replace(/^\uFEFF/, ''))));
  let leftOut = 0;
  const clean = text.replace(TEXTS, (quoted) => {
    const data: string = JSON.parse(quoted);
    if (data === '' || !(photos.has(data) || pictureType(data) !== null)) return quoted;
    const picture = cleanPicture(data);
    if (picture === null) leftOut += 1;
    return picture?.data === data ? quoted : JSON.stringify(picture?.data ?? '');
  });
  return { text: clean, leftOut };
};
