import type { Run } from './run.ts';

/**
 * What pulls at a placement, N, in all: the sum of what its constraints bear. A wire leaves its ends to the
 * pins that are there. `of`: ring index of each constraint, in the order of `reactions`.
 */
export const pullOn = (
  { kind, nodes }: { readonly kind: Run['kind'] | 'pin'; readonly nodes: readonly number[] },
  of: readonly number[],
  reactions: Float64Array,
): number => {
  const own = kind === 'wire' ? nodes.slice(1, -1) : nodes;
  let [x, y] = [0, 0];
  for (const k of own) {
    const at = of.indexOf(k);
    if (at < 0) continue;
    x += reactions[2 * at]!;
    y += reactions[2 * at + 1]!;
  }
  return Math.hypot(x, y);
};
