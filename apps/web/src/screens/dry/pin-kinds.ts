import { type MatWork, type PinCounts, pinsIn, pinTotal } from '@dryflat/record';

/** Kinds of pins as they are counted, in the order in which they are shown. */
export const PIN_KINDS = ['straight', 'tPins', 'combs', 'wires'] as const;
export type PinKind = (typeof PIN_KINDS)[number];

const WORDS: Readonly<Record<PinKind, readonly [one: string, many: string]>> = {
  straight: ['Straight pin', 'Straight pins'],
  tPins: ['T-pin', 'T-pins'],
  combs: ['Comb', 'Combs'],
  wires: ['Wire', 'Wires'],
};

export const NO_PINS: PinCounts = { straight: 0, tPins: 0, combs: 0, wires: 0 };

export const kindWords = (kind: PinKind, count: number): string => WORDS[kind][count === 1 ? 0 : 1];

/** Kinds of which something went into the mat. */
export const kindsIn = (counts: PinCounts): PinKind[] =>
  PIN_KINDS.filter((kind) => counts[kind] > 0);

/** A piece with something in the mat: to be taken out, or out already. */
export const wasPinned = (work: MatWork): boolean => pinTotal(pinsIn(work)) > 0;

/** Everything that went in is out. */
export const isUnpinned = (work: MatWork): boolean => {
  const out = work.out ?? NO_PINS;
  const there = pinsIn(work);
  return PIN_KINDS.every((kind) => out[kind] >= there[kind]);
};
