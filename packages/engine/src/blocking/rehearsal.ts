import type { Point } from '../garment/index.ts';
import { ok, type Result } from '../units/index.ts';
import { nearestNode } from './held-on-mat.ts';
import { openSheet, type PieceSheet } from './piece-sheet.ts';
import { type Fixing, fixingOf, type PinState } from './pin-state.ts';
import type { Placement } from './placements.ts';
import { between } from './plane.ts';
import type { Run } from './run.ts';

/**
 * What a wet knit bears per area before it slides on a mat: twice 0.8 kg/m² of wet wool by a friction of
 * 0.6, and the hand that smooths it, N/mm². Assumption; it only keeps what is not pinned yet where it was laid.
 */
export const MAT_FRICTION = 2e-5;
/** A pin is tried where no force above this is left, N: two grams, which no hand feels. */
const TRIED = { residual: 2e-2, after: 0 } as const;
/** Nodes of the coarser mesh on which pins go in: what moves a pin is felt across the piece. */
const NODES = 240;

/** The planned piece on a coarser mesh with a mat that holds, to try the order of its pins. */
export interface Rehearsal {
  /** The sheet that the placements were planned on. */
  readonly planned: PieceSheet;
  readonly sheet: PieceSheet;
  /** Where each ring node of `sheet` goes if it is held. */
  readonly targets: readonly Point[];
  /** Ring indices of `sheet` that a placement holds. */
  readonly nodesOf: ReadonlyMap<Placement, readonly number[]>;
  /** All of them, rising. */
  readonly held: readonly number[];
  readonly fixingOf: (placed: readonly Placement[]) => Fixing;
}

const down = ({ x, y }: Point): Point => ({ x, y: -y });

/** Ring indices from one to another, both ends with them. */
const range = (from: number, to: number, size: number): number[] =>
  Array.from({ length: ((to - from + size) % size) + 1 }, (_, i) => (from + i) % size);

export const rehearse = (state: PinState, all: readonly Placement[]): Result<Rehearsal> => {
  const planned = state.sheet;
  const ends = (p: Placement) => [...new Set([p.nodes[0]!, p.nodes.at(-1)!])];
  const pinned = [...new Set(all.flatMap(ends))].map((k) => ({
    at: down(planned.ring[k]!.rest),
    to: down(state.targets[k]!),
  }));
  const opened = openSheet(
    { ...planned.piece, pinned, dimensions: [] },
    Math.min(NODES, planned.mesh.points.length / 2),
    planned.effort,
    { friction: MAT_FRICTION, enough: TRIED },
  );
  if (!opened.ok) return opened;
  const sheet = opened.value;
  const targets = sheet.ring.map(({ wanted }) => wanted);
  const nodesOf = new Map<Placement, readonly number[]>();
  for (const each of all) {
    const own = ends(each).map((k) => nearestNode(sheet, planned.ring[k]!.rest));
    const nodes = own.length === 1 ? own : range(own[0]!, own[1]!, sheet.ring.length);
    const [a, b] = ends(each).map((k) => state.targets[k]!) as [Point, Point | undefined];
    nodes.forEach((k, i) => {
      targets[k] = b === undefined ? a : between(a, b, i / Math.max(1, nodes.length - 1));
    });
    nodesOf.set(each, nodes);
  }
  const fixing = (placed: readonly Placement[]): Fixing => {
    const pins = new Map(
      placed.filter(({ kind }) => kind === 'pin').map((p) => [nodesOf.get(p)![0]!, p.most]),
    );
    const runs = placed.flatMap(({ kind, lengthMm, heldBy, most }, i): Run[] =>
      kind === 'pin'
        ? []
        : [{ kind, nodes: nodesOf.get(placed[i]!)!, lengthMm, pins: heldBy, most }],
    );
    return fixingOf(sheet, targets, pins, runs);
  };
  const held = [...new Set([...nodesOf.values()].flat())].sort((a, b) => a - b);
  return ok({ planned, sheet, targets, nodesOf, held, fixingOf: fixing });
};
