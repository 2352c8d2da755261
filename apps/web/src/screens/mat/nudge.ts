import type { Units } from '../../store/index.ts';

export interface Nudge {
  readonly dx: number;
  readonly dy: number;
}

/** One step of a pin by the keys, mm: the finest mark of a tape, or with shift a coarse one. */
export const STEP = {
  cm: { fine: 1, coarse: 10 },
  in: { fine: 25.4 / 8, coarse: 25.4 / 2 },
} as const satisfies Record<Units, { fine: number; coarse: number }>;

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** What a key moves a pin by; null for a key that moves nothing. */
export const nudgeOf = (key: string, shift: boolean, units: Units): Nudge | null => {
  const way = WAYS[key];
  if (way === undefined) return null;
  const step = STEP[units][shift ? 'coarse' : 'fine'];
  return { dx: way[0] * step, dy: way[1] * step };
};
