import { type Kept, keptAs } from './pins-around.ts';
import type { Placement } from './placements.ts';
import type { PinKind, Stock } from './types.ts';

/** About a third of the pins stand where the pull is strongest. Common practice, no source. */
const STRONG = 1 / 3;

/** The kinds that steps had before, as far as what is left has them; else what there is, straight first. */
export const kindsLeft = (
  coming: readonly Placement[],
  stock: Stock,
  forWires: number,
  kept: Kept,
): Map<Placement, PinKind> => {
  const left = {
    straight: stock.straight - Math.min(stock.straight, forWires),
    't-pin': stock.tPins - Math.max(0, forWires - stock.straight),
  };
  const kinds = new Map<Placement, PinKind>();
  const give = (each: Placement, first: keyof typeof left) => {
    const other = first === 'straight' ? 't-pin' : 'straight';
    const kind = left[first] > 0 ? first : other;
    left[kind] -= 1;
    kinds.set(each, kind);
  };
  const pins = coming.filter(({ kind }) => kind === 'pin');
  const was = (each: Placement) => keptAs(kept, each)?.kind;
  // Those that had a kind come first, so that a new one never takes it from them.
  const old = pins.filter((each) => was(each) !== undefined);
  for (const each of old) give(each, was(each) === 't-pin' ? 't-pin' : 'straight');
  for (const each of pins) if (!kinds.has(each)) give(each, 'straight');
  for (const each of coming) if (each.kind !== 'pin') kinds.set(each, each.kind);
  return kinds;
};

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
