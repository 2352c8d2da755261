import type { PinCounts } from '../schema/index.ts';
import { PIN_KINDS, type PinKind } from './pin-counts.ts';

const WORDS: Readonly<Record<PinKind, readonly [one: string, more: string]>> = {
  straight: ['straight pin', 'straight pins'],
  tPins: ['T-pin', 'T-pins'],
  combs: ['comb', 'combs'],
  wires: ['wire', 'wires'],
};

/** `2 straight pins, 1 T-pin`; kinds of which there are none are left out, `no pins` where that is all. */
export const pinWords = (counts: PinCounts): string =>
  PIN_KINDS.filter((kind) => counts[kind] > 0)
    .map((kind) => `${counts[kind]} ${WORDS[kind][counts[kind] === 1 ? 0 : 1]}`)
    .join(', ') || 'no pins';
