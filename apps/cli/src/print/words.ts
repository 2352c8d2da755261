import type { BasisKind, ForecastState } from '@dryflat/engine/fabric';
import { findLandmark } from '@dryflat/engine/garment';

export { inWords } from '@dryflat/paper/craft-words';

export type Words = 'us' | 'uk';

/** States as headings, in the order in which a garment goes through them. */
export const STATE_WORDS: Readonly<Record<ForecastState, string>> = {
  asKnit: 'as knit',
  wet: 'wet',
  dried: 'dried',
  worn: 'worn',
  rewashed: 'rewashed',
};

/** How sure an input is, in the words of the list at the end. */
export const BASIS_WORDS: Readonly<Record<BasisKind, string>> = {
  measured: 'measured',
  'from-pattern': 'pattern',
  published: 'published',
  'common-practice': 'custom',
  'from-memory': 'from memory',
  assumption: 'assumed',
};

export const BASIS_MEANING: Readonly<Record<BasisKind, string>> = {
  measured: 'by this knitter',
  'from-pattern': 'what the pattern says of itself',
  published: 'with its source',
  'common-practice': 'common practice of the craft, no source',
  'from-memory': 'a figure remembered, no source at hand',
  assumption: 'wide on purpose, no source; a swatch replaces it',
};

const GAUGE = { us: 'Gauge', uk: 'Tension' } as const;
export const gaugeWord = (words: Words): string => GAUGE[words];

/** A landmark in American or British words; one that the knitter made up stays as it is. */
export const landmarkName = (id: string, words: Words): string =>
  findLandmark(id)?.name[words] ?? id;
