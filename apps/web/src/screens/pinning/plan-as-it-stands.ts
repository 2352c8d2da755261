import type { PiecePlan } from '@dryflat/engine/blocking';
import type { Cloth, Lying, Planned } from '../../worker/mat/index.ts';
import { tapeNow } from '../mat/tape-now.ts';
import type { PinPlaces } from '../mat/use-mat.ts';

/** The plan with its pins where the knitter moved them, and the edge as it lies then. */
export const planAsItStands = (
  { plan, mat }: Planned,
  places: PinPlaces,
  laid: { readonly cloth: Cloth; readonly lying: Lying } | null,
): PiecePlan => {
  const pins = plan.pins.map((pin, k) => {
    const at = places[k] ?? ([pin.xMm, pin.yMm] as const);
    const [a, b] = tapeNow(pin, at, plan.pins, places, mat);
    return { ...pin, xMm: at[0], yMm: at[1], from: [a ?? pin.from[0], b ?? pin.from[1]] as const };
  });
  if (laid === null) return { ...plan, pins };
  const { points } = laid.lying;
  const pinned = Array.from(laid.cloth.ring, (node) => ({
    x: points[2 * node]!,
    y: points[2 * node + 1]!,
  }));
  return { ...plan, pins, outlines: { ...plan.outlines, pinned } };
};
