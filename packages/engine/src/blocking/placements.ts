import type { Point } from '../garment/index.ts';
import type { PinState } from './pin-state.ts';
import { distance } from './plane.ts';
import type { Run } from './run.ts';

/** One thing that the knitter puts on the mat in one go. */
export interface Placement {
  readonly kind: 'pin' | 'comb' | 'wire';
  /** Ring indices that it holds, in order; one for a pin. */
  readonly nodes: readonly number[];
  /** y up, mm. */
  readonly at: Point;
  readonly pullN: number;
  readonly lengthMm: number;
  /** Unit vector along a comb or a wire. */
  readonly along: Point;
}

const ofPin = (state: PinState, k: number): Placement => ({
  kind: 'pin',
  nodes: [k],
  at: state.targets[k]!,
  pullN: state.pull(k),
  lengthMm: 0,
  along: { x: 0, y: 0 },
});

const ofRun = (state: PinState, { kind, nodes, lengthMm }: Run): Placement => {
  const [a, b] = [state.place(nodes[0]!), state.place(nodes.at(-1)!)];
  const own = kind === 'wire' ? nodes.slice(1, -1) : nodes;
  const { reactions } = state.eq;
  const { of } = state.fixing;
  let [x, y] = [0, 0];
  for (const k of own) {
    const at = of.indexOf(k);
    x += at < 0 ? 0 : reactions[2 * at]!;
    y += at < 0 ? 0 : reactions[2 * at + 1]!;
  }
  const size = distance(a, b) || 1;
  return {
    kind,
    nodes,
    at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    pullN: Math.hypot(x, y),
    lengthMm,
    along: { x: (b.x - a.x) / size, y: (b.y - a.y) / size },
  };
};

/** Everything that holds the piece, pins first, in the order of the edge. */
export const placementsOf = (state: PinState): Placement[] => [
  ...[...state.pins].sort((a, b) => a - b).map((k) => ofPin(state, k)),
  ...state.runs.map((run) => ofRun(state, run)),
];
