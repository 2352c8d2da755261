import type { PieceSheet } from './piece-sheet.ts';

/** A wanted line this straight is straight for a comb or a wire, mm. */
const BEND = 1.5;

/** Whether the wanted line through ring indices, in order, is straight. */
export const isStraight = ({ ring }: PieceSheet, nodes: readonly number[]): boolean => {
  const [a, b] = [ring[nodes[0]!]!.wanted, ring[nodes.at(-1)!]!.wanted];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return (
    length > 0 &&
    nodes.every((k) => {
      const p = ring[k]!.wanted;
      return Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length <= BEND;
    })
  );
};
