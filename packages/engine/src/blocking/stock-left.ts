import type { PinKind, PinPlaced, Stock } from './types.ts';

type Taken = { readonly kind: PinKind; readonly along: PinPlaced['along'] };

/** Lengths that differ by less are one, mm. */
const SAME = 0.5;

const without = (list: Stock['combs'], lengths: readonly number[]): Stock['combs'] => {
  const counts = list.map(({ count }) => count);
  for (const length of lengths) {
    const fits = (k: number) => counts[k]! > 0 && Math.abs(list[k]!.lengthMm - length) < SAME;
    const at = list.findIndex((_, k) => fits(k));
    if (at >= 0) counts[at]! -= 1;
  }
  return list.map((each, k) => ({ ...each, count: counts[k]! }));
};

/**
 * What is left of the stock once these are in: of each kind its own, never below none. Pins that hold
 * wires are straight ones as long as there are any, then T-pins.
 */
export const stockWithout = (stock: Stock, taken: readonly Taken[], pinsForWires = 0): Stock => {
  const count = (kind: PinKind) => taken.filter((each) => each.kind === kind).length;
  const lengths = (kind: PinKind) =>
    taken.flatMap((each) =>
      each.kind === kind && each.along !== null ? [each.along.lengthMm] : [],
    );
  const straight = stock.straight - count('straight') - pinsForWires;
  return {
    straight: Math.max(0, straight),
    tPins: Math.max(0, stock.tPins - count('t-pin') + Math.min(0, straight)),
    combs: without(stock.combs, lengths('comb')),
    wires: without(stock.wires, lengths('wire')),
  };
};
