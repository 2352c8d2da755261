import type { Placement } from './placements.ts';
import type { PinKind, Stock } from './types.ts';

/** About a third of the pins stand where the pull is strongest. Common practice, no source. */
const STRONG = 1 / 3;

/**
 * Kind of each placement: T-pins where the pull is strongest, straight pins elsewhere, and either for
 * the other where one runs out. The stock must hold as many as there are pins.
 */
export const kindsOf = (
  all: readonly Placement[],
  stock: Stock,
  forWires: number,
): Map<Placement, PinKind> => {
  const kinds = new Map<Placement, PinKind>();
  const pins = all.filter(({ kind }) => kind === 'pin').sort((a, b) => b.pullN - a.pullN);
  // Wires are held by straight pins as long as there are any.
  const straight = Math.max(0, stock.straight - forWires);
  const least = Math.max(0, pins.length - straight);
  const tPins = Math.min(stock.tPins, Math.max(least, Math.ceil(STRONG * pins.length)));
  pins.forEach((pin, k) => {
    kinds.set(pin, k < tPins ? 't-pin' : 'straight');
  });
  for (const each of all) if (each.kind !== 'pin') kinds.set(each, each.kind);
  return kinds;
};
