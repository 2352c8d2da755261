import { fail, ok, type Result } from '@dryflat/engine/units';
import type { Photo } from '@dryflat/record';
import { cleanJpeg, toBase64 } from '@dryflat/record/photo';

export type Picture = Pick<Photo, 'type' | 'widthPx' | 'heightPx' | 'data'>;

/** Longest side of a kept picture, px: fills a page of a report, and a phone's screen twice. */
const LONGEST = 1280;
/** The most that a picture may take, bytes: what the record has room for. */
const MOST = 300_000;
/** Qualities of JPEG that are tried, best first. */
const QUALITIES = [0.82, 0.7, 0.55, 0.4];
/** A picture that is still too large is made smaller by this, over and over. */
const SMALLER = 0.75;
/** Below this nothing is seen any more, px. */
const LEAST = 64;

/** Size of a picture whose longest side is at most `longest`; never made larger. */
export const fitted = (
  { width, height }: { readonly width: number; readonly height: number },
  longest: number,
): { readonly width: number; readonly height: number } => {
  const scale = Math.min(1, longest / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
};

/** Draws it upright on white (JPEG knows no transparency) and gives back JPEG. */
const drawn = async (
  bitmap: ImageBitmap,
  size: { readonly width: number; readonly height: number },
): Promise<(quality: number) => Promise<Blob | null>> => {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, size);
  const context = canvas.getContext('2d');
  if (context === null) return async () => null;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, size.width, size.height);
  context.drawImage(bitmap, 0, 0, size.width, size.height);
  return (quality) => new Promise((done) => canvas.toBlob(done, 'image/jpeg', quality));
};

const small = async (bitmap: ImageBitmap, longest: number): Promise<Picture | null> => {
  if (longest < LEAST) return null;
  const size = fitted(bitmap, longest);
  const encode = await drawn(bitmap, size);
  for (const quality of QUALITIES) {
    const blob = await encode(quality);
    const clean = blob && cleanJpeg(new Uint8Array(await blob.arrayBuffer()));
    if (clean && clean.length <= MOST)
      return {
        type: 'image/jpeg',
        widthPx: size.width,
        heightPx: size.height,
        data: toBase64(clean),
      };
  }
  return small(bitmap, longest * SMALLER);
};

const noPicture = (file: File): Result<never> =>
  fail({
    code: 'no-picture',
    field: 'Photo',
    given: file.name,
    problem: 'this is no picture that the browser can open',
    mend: 'Take a photo, or choose a JPEG, PNG or WebP file.',
  });

/**
 * A picture file made small for the record: turned upright, its longest side at most 1280 px, at most
 * 300 kB of JPEG, encoded anew and cleaned so that nothing of what the camera noted is left. A file
 * that the browser cannot open as a picture is a fault.
 */
export const takePhoto = async (file: File): Promise<Result<Picture>> => {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(
    () => null,
  );
  if (bitmap === null) return noPicture(file);
  try {
    const picture = await small(bitmap, LONGEST);
    return picture === null ? noPicture(file) : ok(picture);
  } finally {
    bitmap.close();
  }
};
