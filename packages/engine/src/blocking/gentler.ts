import type { Constraints } from '../membrane/index.ts';
import { solveWith } from './lie.ts';
import { measured, type Ruler, restOf, SEEN } from './measure.ts';
import type { PinState } from './pin-state.ts';
import type { Gentler } from './types.ts';

/** Rounding of a stretch: a tenth of a percent is below what a tape tells. */
export const beyondSafe = (stretch: number, limit: number): boolean => stretch > limit + 0.001;

const SHARES = [2 / 3, 1 / 3] as const;

/** The constraints with every place that share of the way from rest to where it is now. */
const eased = ({ sheet, fixing }: PinState, share: number): Constraints => {
  const { ring } = sheet;
  const rest = new Map(ring.map(({ node, rest: at }) => [node, at]));
  const { pins, slides } = fixing.constraints;
  return {
    held: [],
    pins: pins.map((pin) => {
      const { node, x, y } = pin;
      const from = rest.get(node)!;
      return { ...pin, x: from.x + share * (x - from.x), y: from.y + share * (y - from.y) };
    }),
    slides: slides.map((slide) => {
      const ease = (x: number, y: number) => {
        // A line keeps its own direction; only its distance from the place at rest shrinks.
        const from = rest.get(slide.node)!;
        return [x + (1 - share) * (from.x - foot.x), y + (1 - share) * (from.y - foot.y)] as const;
      };
      const foot = footOf(slide, rest.get(slide.node)!);
      const [ax, ay] = ease(slide.ax, slide.ay);
      const [bx, by] = ease(slide.bx, slide.by);
      return { ...slide, ax, ay, bx, by };
    }),
  };
};

const footOf = (
  { ax, ay, bx, by }: { ax: number; ay: number; bx: number; by: number },
  p: { x: number; y: number },
) => {
  const [dx, dy] = [bx - ax, by - ay];
  const along = ((p.x - ax) * dx + (p.y - ay) * dy) / (dx * dx + dy * dy);
  return { x: ax + along * dx, y: ay + along * dy };
};

const summary = (
  share: number,
  limit: number,
  rulers: readonly Ruler[],
  lengths: readonly number[],
): Gentler => {
  const stretches = rulers.map((ruler, i) => lengths[i]! / restOf(ruler) - 1);
  return {
    share,
    reached: rulers.map(({ dimension }, i) => ({ name: dimension.name, mm: lengths[i]! })),
    largestStretch: stretches.reduce((most, s) => Math.max(most, s), 0),
    beyondSafe: rulers.flatMap(({ dimension }, i) =>
      beyondSafe(stretches[i]!, limit) ? [dimension.name] : [],
    ),
  };
};

/**
 * The plan and the same pins with less stretch, down to the share at which nothing is beyond safe; the plan alone
 * where a tape finds no dimension stretched.
 */
export const gentlerOf = (
  state: PinState,
  rulers: readonly Ruler[],
  goOn: () => boolean,
): { gentler: Gentler[]; iterations: number } => {
  const { ring } = state.sheet;
  const lengths = (points: Float64Array) => rulers.map((ruler) => measured(ruler, ring, points));
  const { limit } = state.sheet.piece.fabric.safe;
  const now = lengths(state.eq.points);
  const full = summary(1, limit, rulers, now);
  const isSeen = rulers.some((ruler, i) => now[i]! - restOf(ruler) > SEEN);
  if (!isSeen && full.beyondSafe.length === 0) return { gentler: [full], iterations: 0 };
  const shares: number[] = [...SHARES];
  if (full.beyondSafe.length > 0) shares.push(limit / full.largestStretch);
  let iterations = 0;
  const gentler = [full];
  for (const share of shares.sort((a, b) => b - a)) {
    if (!goOn() || !state.sheet.effort.goOn()) break;
    const eq = solveWith(state.sheet, eased(state, share));
    iterations += eq.iterations;
    gentler.push(summary(share, limit, rulers, lengths(eq.points)));
  }
  return { gentler, iterations };
};
