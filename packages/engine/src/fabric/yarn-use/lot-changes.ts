import { quantilesInPlace } from '../../stats/index.ts';
import { MOST_SHORT } from './assumptions.ts';
import type { LotChange, YarnLot, YarnWork } from './types.ts';

/** A lot, grams over the draws. */
export interface Supply {
  readonly lot: YarnLot;
  readonly grams: Float64Array;
}

/** Mean over the draws. */
export const middle = (column: Float64Array): number =>
  column.reduce((sum, each) => sum + each, 0) / column.length;

/** How far so many grams go, as parts done plus the share of the next; the number of parts where all is done. */
const reach = (needs: readonly Float64Array[], grams: number, i: number): number => {
  let left = grams;
  for (let part = 0; part < needs.length; part++) {
    const need = needs[part]![i]!;
    if (left < need) return part + left / need;
    left -= need;
  }
  return needs.length;
};

/** Where each lot but the last ends, parts in order and the largest lot first, in all but 5 % of draws. */
export const lotChanges = (
  { parts }: YarnWork,
  needs: readonly Float64Array[],
  supplies: readonly Supply[],
): LotChange[] => {
  const order = [...supplies].sort((a, b) => middle(b.grams) - middle(a.grams));
  const used = new Float64Array(order[0]!.grams.length);
  return order.slice(0, -1).flatMap(({ lot, grams }, k) => {
    const reached = used.map((_, i) => {
      used[i]! += grams[i]!;
      return reach(needs, used[i]!, i);
    });
    const [safe] = quantilesInPlace(reached, [MOST_SHORT]);
    const part = parts[Math.floor(safe!)];
    return part === undefined
      ? []
      : [
          {
            from: lot.dyeLot,
            to: order[k + 1]!.lot.dyeLot,
            part: part.name,
            share: safe! - Math.floor(safe!),
          },
        ];
  });
};
