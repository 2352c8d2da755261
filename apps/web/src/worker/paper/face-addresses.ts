import type { FaceName } from '@dryflat/paper';
import latinRegular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import latinStrong from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url';
import latinExtRegular from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url';
import latinExtStrong from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url';
import cyrillicRegular from '@fontsource/open-sans/files/open-sans-cyrillic-400-normal.woff?url';
import cyrillicStrong from '@fontsource/open-sans/files/open-sans-cyrillic-700-normal.woff?url';
import greekRegular from '@fontsource/open-sans/files/open-sans-greek-400-normal.woff?url';
import greekStrong from '@fontsource/open-sans/files/open-sans-greek-700-normal.woff?url';
import plainRegular from '@fontsource/open-sans/files/open-sans-latin-400-normal.woff?url';
import plainStrong from '@fontsource/open-sans/files/open-sans-latin-700-normal.woff?url';
import mathRegular from '@fontsource/open-sans/files/open-sans-math-400-normal.woff?url';
import mathStrong from '@fontsource/open-sans/files/open-sans-math-700-normal.woff?url';
import symbolsRegular from '@fontsource/open-sans/files/open-sans-symbols-400-normal.woff?url';
import symbolsStrong from '@fontsource/open-sans/files/open-sans-symbols-700-normal.woff?url';

/** Where the app keeps the file of each face. */
export const FACE_ADDRESSES: Readonly<Record<FaceName, string>> = {
  'latin-regular': latinRegular,
  'latin-strong': latinStrong,
  'latin-ext-regular': latinExtRegular,
  'latin-ext-strong': latinExtStrong,
  'plain-regular': plainRegular,
  'plain-strong': plainStrong,
  'symbols-regular': symbolsRegular,
  'symbols-strong': symbolsStrong,
  'math-regular': mathRegular,
  'math-strong': mathStrong,
  'cyrillic-regular': cyrillicRegular,
  'cyrillic-strong': cyrillicStrong,
  'greek-regular': greekRegular,
  'greek-strong': greekStrong,
};
