export { fromBase64, toBase64 } from './bytes.ts';
export { type CleanFile, cleanFile } from './clean-file.ts';
export { cleanJpeg } from './jpeg.ts';
export { type CleanPicture, cleanPicture } from './picture.ts';
