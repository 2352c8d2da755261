import { solveWith } from './lie.ts';
import { measured, type Ruler } from './measure.ts';
import { openSheet } from './piece-sheet.ts';
import { fixingOf, type PinState } from './pin-state.ts';
import type { EdgeKind, PieceToBlock } from './types.ts';

/** A seam, or the edge under a band, before it is sewn or picked up. */
const UNSEWN: Readonly<Partial<Record<EdgeKind, EdgeKind>>> = {
  seam: 'selvedge',
  'picked-up': 'selvedge',
};

export const isSewn = ({ layers, edges }: PieceToBlock): boolean =>
  layers === 2 || edges.some((kind) => kind in UNSEWN);

/** What the same pins, at the places wanted, would bring before the piece is sewn; null where it is not or nothing is left to spend. */
export const beforeSewing = (
  state: PinState,
  rulers: readonly Ruler[],
  nodes: number,
): { reached: { name: string; mm: number }[]; iterations: number } | null => {
  const { sheet, startTargets, runs } = state;
  const { piece } = sheet;
  if (!isSewn(piece) || !sheet.effort.goOn()) return null;
  const edges = piece.edges.map((kind) => UNSEWN[kind] ?? kind);
  const opened = openSheet({ ...piece, layers: 1, edges }, nodes, sheet.effort);
  if (!opened.ok) return null;
  const { ring } = opened.value;
  const { constraints } = fixingOf(opened.value, startTargets, state.bearing(), runs);
  const eq = solveWith(opened.value, constraints);
  const reached = rulers.map((ruler) => ({
    name: ruler.dimension.name,
    mm: measured(ruler, ring, eq.points),
  }));
  return { reached, iterations: eq.iterations };
};
