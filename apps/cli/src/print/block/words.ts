import type { EdgeKind, PinKind } from '@dryflat/engine/blocking';
import { landmarkName, type Words } from '../words.ts';

export const PIN_WORDS: Readonly<Record<PinKind, string>> = {
  straight: 'straight pin',
  't-pin': 'T-pin',
  comb: 'comb',
  wire: 'wire',
};

const EDGE_WORDS: Readonly<Record<EdgeKind, string>> = {
  'cast-on': 'cast-on edge',
  'bound-off': 'bound-off edge',
  selvedge: 'selvedge',
  seam: 'seam',
  'picked-up': 'picked-up edge',
  rib: 'ribbing',
  fold: 'fold',
  open: 'edge',
};

export const edgeWord = (edge: EdgeKind, words: Words): string =>
  words === 'uk' && edge === 'bound-off' ? 'cast-off edge' : EDGE_WORDS[edge];

export const many = (count: number, word: string): string =>
  `${count} ${word}${count === 1 ? '' : 's'}`;

/** A sentence of the plan that begins with a landmark's id, or holds one of two words, with its name in the words of the craft. */
export const named = (what: string, words: Words): string =>
  what
    .replace(/^([a-z]+(?:-[a-z]+)*): /, (_, id: string) => `${landmarkName(id, words)}: `)
    .replace(/\b[a-z]+(?:-[a-z]+)+\b/g, (id) => landmarkName(id, words));
