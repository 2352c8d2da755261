import { findLandmark } from '@dryflat/engine/garment';
import { fillLengths, formatLength, formatRange, mm } from '@dryflat/engine/units';
import { inWords } from '../craft-words.ts';
import type { PaperName } from '../sheet/paper-size.ts';
import type { Faces } from '../type/faces.ts';

export type Units = 'cm' | 'in';
export type Words = 'us' | 'uk';

/** How a text is to be written. */
export interface Telling {
  readonly units: Units;
  readonly words: Words;
}

/** How a page is to be written. */
export interface PageOptions extends Telling {
  readonly paper: PaperName;
  readonly faces: Faces;
}

/** A length in the reader's unit; `bare` without its name. */
export const lengthText = (valueMm: number, unit: Units, bare = false): string =>
  formatLength(mm(valueMm), { unit, bare });

/** A range rounded outwards to the marks of the tape, without the unit. */
export const rangeText = (
  { p05Mm, p95Mm }: { readonly p05Mm: number; readonly p95Mm: number },
  unit: Units,
): string => formatRange(p05Mm, p95Mm, unit, { bare: true });

/** The unit's name as the reader spells it, for many of it. */
export const unitName = ({ units, words }: Telling): string =>
  units === 'in' ? 'inches' : words === 'uk' ? 'centimetres' : 'centimeters';

/** A length in a column: every centimetre shows its tenth, so that the points stand under each other. */
export const columnText = (valueMm: number, unit: Units): string => {
  const text = lengthText(valueMm, unit, true);
  return unit === 'cm' && /^\d+$/.test(text) ? `${text}.0` : text;
};

/** A sentence of the engine in the reader's unit and English. */
export const sentence = (text: string, units: Units, words: Words): string =>
  inWords(
    fillLengths(text, (length) => lengthText(length, units)),
    words,
  );

/** `Gauge` in American, `Tension` in British. */
export const gaugeWord = (words: Words): string => ({ us: 'Gauge', uk: 'Tension' })[words];

/** A landmark's name; one that the knitter made up stays as it is. */
export const landmarkName = (id: string, words: Words): string =>
  findLandmark(id)?.name[words] ?? id;

/** A sentence of the plan that begins with a landmark's id, or holds one of two words, with its name in the words of the craft. */
export const named = (what: string, words: Words): string =>
  what
    .replace(/^([a-z]+(?:-[a-z]+)*): /, (_, id: string) => `${landmarkName(id, words)}: `)
    .replace(/\b[a-z]+(?:-[a-z]+)+\b/g, (id) => landmarkName(id, words));
