import type { DimensionToReach } from '@dryflat/engine/blocking';
import { boxOf, type OutlinePiece } from '@dryflat/engine/garment';
import { flattened } from './flattened.ts';

interface Measured {
  readonly landmark: string;
  readonly direction: 'width' | 'length';
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

/** The edge that was cast on, end to end, and from its line to the highest point of the piece. */
const measuredOn = (piece: OutlinePiece): Measured[] => {
  const edges = piece.path.filter(({ edge }) => edge === 'cast-on');
  const [first, last] = [edges[0], edges.at(-1)];
  if (!first || !last) return [];
  const { top, bottom } = boxOf(flattened(piece).points);
  const peak = flattened(piece).points.find(({ y }) => y === top);
  return [
    { landmark: 'hem', direction: 'width', from: first.from, to: last.to },
    ...(peak
      ? [
          {
            landmark: 'body-length',
            direction: 'length' as const,
            from: peak,
            to: { x: peak.x, y: bottom },
          },
        ]
      : []),
  ];
};

/**
 * Dimensions of a piece on which none is drawn, because they stand on another: a cardigan's front takes
 * its sizes from the back. Measured on its own outline, at rest and as wanted.
 */
export const dimensionsByDrawing = (
  lying: OutlinePiece,
  goal: OutlinePiece,
): DimensionToReach[] => {
  const wanted = measuredOn(goal);
  return measuredOn(lying).flatMap(({ landmark, direction, from, to }) => {
    const target = wanted.find((each) => each.landmark === landmark);
    if (!target) return [];
    const targetMm = Math.hypot(target.to.x - target.from.x, target.to.y - target.from.y);
    return [{ name: landmark, landmark, direction, from, to, targetMm }];
  });
};
