import type { EdgeKind, OrderWay, PinKind } from '@dryflat/engine/blocking';
import { type CraftWord, useWords } from '../../kit/index.ts';

export const PIN_WORDS: Readonly<Record<PinKind, string>> = {
  straight: 'straight pin',
  't-pin': 'T-pin',
  comb: 'comb',
  wire: 'wire',
};

export const PIN_PLURALS: Readonly<Record<PinKind, string>> = {
  straight: 'straight pins',
  't-pin': 'T-pins',
  comb: 'combs',
  wire: 'wires',
};

/** `12 T-pins`, `1 comb`. */
export const countOf = (kind: PinKind, count: number): string =>
  `${count} ${count === 1 ? PIN_WORDS[kind] : PIN_PLURALS[kind]}`;

export const PIN_KINDS = ['straight', 't-pin', 'comb', 'wire'] as const;

const edgeWords = (word: (word: CraftWord) => string): Readonly<Record<EdgeKind, string>> => ({
  'cast-on': 'cast-on edge',
  'bound-off': word('bound-off edge'),
  selvedge: 'selvedge',
  seam: 'seam',
  'picked-up': 'picked-up edge',
  rib: 'ribbing',
  fold: 'fold',
  open: 'open edge',
});

/** What an edge is called in the knitter's English. */
export const useEdgeWords = (): Readonly<Record<EdgeKind, string>> => edgeWords(useWords());

/** Which way around the piece an order goes. */
export const WAY_WORDS: Readonly<Record<OrderWay, string>> = {
  outwards: 'from the middle of the top outwards',
  'lower-edge-first': 'the lower edge first, then the upper one, then the sides',
  'as-it-stood': 'as it was planned',
};

/** `43 %`; what is less than half of one is `under 1 %`. */
export const percent = (share: number): string =>
  share > 0 && share < 0.005 ? 'under 1 %' : `${Math.round(100 * share)} %`;

/** Newtons as the weight that pulls as hard: what a hand can imagine. One newton is 102 g. */
export const pullWords = (newtons: number): string => {
  const grams = newtons * 101.97;
  return grams < 1 ? 'hardly pulled' : `pulled like ${Math.round(grams)} g`;
};

export const pieceWord = (name: string): string =>
  `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
