import type { Point } from '../garment/index.ts';
import type { PinState } from './pin-state.ts';
import { between } from './plane.ts';

/** The edge between two neighbouring pins. Indices are of the ring; `to` may be below `from`. */
export interface Gap {
  readonly from: number;
  readonly to: number;
  /** Ring indices between them, in order. */
  readonly within: readonly number[];
  /** How far the edge lies inside the wanted line at the worst place, mm; 0 or more. Of what is left to draw in nothing is claimed. */
  readonly scallop: number;
  /** Ring index of that place; -1 where there is none that may be pinned. */
  readonly worst: number;
  /** Length at rest, mm. */
  readonly length: number;
}

/** Outward normal of the wanted line at a ring index. */
const outwardAt = (targets: readonly Point[], k: number): Point => {
  const [a, b] = [targets.at(k - 1)!, targets[(k + 1) % targets.length]!];
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  return size > 0 ? { x: (b.y - a.y) / size, y: (a.x - b.x) / size } : { x: 0, y: 0 };
};

/**
 * Where the edge between two pins should lie: on the wanted line, moved along with the pins where these
 * stand elsewhere than wanted.
 */
export const shouldLie = (state: PinState, from: number, to: number, k: number): Point => {
  const { ring, around } = state.sheet;
  const way = (i: number) => (ring[i]!.around - ring[from]!.around + around) % around;
  const whole = way(to) || around;
  const share = way(k) / whole;
  const off = (i: number): Point => {
    const [t, w] = [state.stands(i), state.startTargets[i]!];
    return { x: t.x - w.x, y: t.y - w.y };
  };
  const moved = between(off(from), off(to), share);
  const own = state.startTargets[k]!;
  return { x: own.x + moved.x, y: own.y + moved.y };
};

export const gapsOf = (state: PinState): Gap[] => {
  const { ring, around } = state.sheet;
  const fixed = state.fixed();
  if (fixed.length < 2) return [];
  const wanted = state.startTargets;
  return fixed.flatMap((from, at): Gap[] => {
    const to = fixed[(at + 1) % fixed.length]!;
    const count = (to - from + ring.length) % ring.length || ring.length;
    const within = Array.from({ length: count - 1 }, (_, i) => (from + 1 + i) % ring.length);
    if (within.length === 0) return [];
    let [scallop, worst] = [0, -1];
    for (const k of within) {
      if (ring[k]!.pinning !== 'free') continue;
      const [should, is, normal] = [
        shouldLie(state, from, to, k),
        state.place(k),
        outwardAt(wanted, k),
      ];
      const inwards = (should.x - is.x) * normal.x + (should.y - is.y) * normal.y;
      if (inwards > scallop) [scallop, worst] = [inwards, k];
    }
    const length = (ring[to]!.around - ring[from]!.around + around) % around || around;
    return [{ from, to, within, scallop, worst, length }];
  });
};
