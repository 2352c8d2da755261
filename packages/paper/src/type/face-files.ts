import type { Weight } from '../sheet/sheet.ts';

/** A set of letters; earlier ones are asked first. */
export const SCRIPTS = [
  'latin',
  'latin-ext',
  'plain',
  'symbols',
  'math',
  'cyrillic',
  'greek',
] as const;
export type Script = (typeof SCRIPTS)[number];
export type FaceName = `${Script}-${Weight}`;

const ATKINSON = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';
const OPEN = '@fontsource/open-sans/files/open-sans';

/** Atkinson Hyperlegible Next for words and numbers, Open Sans for what it lacks; both SIL OFL 1.1. */
const STEMS: Readonly<Record<Script, string>> = {
  latin: `${ATKINSON}-latin`,
  'latin-ext': `${ATKINSON}-latin-ext`,
  plain: `${OPEN}-latin`,
  symbols: `${OPEN}-symbols`,
  math: `${OPEN}-math`,
  cyrillic: `${OPEN}-cyrillic`,
  greek: `${OPEN}-greek`,
};
const GRADES: Readonly<Record<Weight, number>> = { regular: 400, strong: 700 };

/** The font file of each face, as a path in the packages; whoever has a disk or a network reads them. */
export const FACE_FILES: readonly { readonly name: FaceName; readonly file: string }[] =
  SCRIPTS.flatMap((script) =>
    (['regular', 'strong'] as const).map((weight) => ({
      name: `${script}-${weight}` as const,
      file: `${STEMS[script]}-${GRADES[weight]}-normal.woff`,
    })),
  );
