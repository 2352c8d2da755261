import type { Point } from '../garment/index.ts';
import type { PinState } from './pin-state.ts';
import { distance } from './plane.ts';
import { pullOn } from './pull-on.ts';
import type { Run } from './run.ts';

/** One thing that the knitter puts on the mat in one go. */
export interface Placement {
  readonly kind: 'pin' | 'comb' | 'wire';
  /** Ring indices that it holds, in order; one for a pin. */
  readonly nodes: readonly number[];
  /** y up, mm. */
  readonly at: Point;
  /** What the fabric pulls at it with, N; of a wire at each of the pins along it. */
  readonly pullN: number;
  /** Pins that bear what pulls at it: of a wire those along it, else 1. */
  readonly heldBy: number;
  /** What they bear in all, N. */
  readonly most: number;
  readonly lengthMm: number;
  /** Unit vector along a comb or a wire. */
  readonly along: Point;
}

const ofPin = (state: PinState, k: number, most: number): Placement => ({
  kind: 'pin',
  nodes: [k],
  at: state.targets[k]!,
  pullN: state.pull(k),
  heldBy: 1,
  most,
  lengthMm: 0,
  along: { x: 0, y: 0 },
});

const ofRun = (state: PinState, { kind, nodes, lengthMm, pins, most }: Run): Placement => {
  const [a, b] = [state.place(nodes[0]!), state.place(nodes.at(-1)!)];
  const size = distance(a, b) || 1;
  return {
    kind,
    nodes,
    at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    pullN: pullOn({ kind, nodes }, state.fixing.of, state.eq.reactions) / pins,
    heldBy: pins,
    most,
    lengthMm,
    along: { x: (b.x - a.x) / size, y: (b.y - a.y) / size },
  };
};

/** Everything that holds the piece, pins first, in the order of the edge. */
export const placementsOf = (state: PinState): Placement[] => [
  ...[...state.bearing()].sort(([a], [b]) => a - b).map(([k, most]) => ofPin(state, k, most)),
  ...state.runs.map((run) => ofRun(state, run)),
];
