import { findLandmark } from '../landmarks.ts';
import type { Ledger } from './ledger.ts';
import type { Dimension, Point, Side } from './types.ts';

/** Makes the dimensions of one outline, with the number and the standing that the ledger holds. */
export const dimensioner =
  (ledger: Ledger) =>
  (
    landmark: string,
    from: Point,
    to: Point,
    side: Side,
    outside = side !== 'inside',
  ): Dimension => ({
    landmark,
    direction: findLandmark(landmark)?.direction ?? 'width',
    from,
    to,
    side,
    outside,
    mm: ledger.printed(landmark),
    assumed: !ledger.has(landmark),
  });

export type Dimensioner = ReturnType<typeof dimensioner>;
