import type { Point } from '../garment/index.ts';
import type { Reference } from './on-mat.ts';
import { distance } from './plane.ts';
import type { TapeDistance } from './types.ts';

/** Seen from the place, two references are this far apart, degrees: then both distances tell. */
const LEAST_ANGLE = 30;
const MOST_ANGLE = 150;
/** Nearest references looked at. */
const NEAREST = 12;
/** A distance shorter than this is no distance to measure, mm. */
const SHORTEST = 10;

export const angleBetween = (at: Point, a: Point, b: Point): number => {
  const [ux, uy, vx, vy] = [a.x - at.x, a.y - at.y, b.x - at.x, b.y - at.y];
  return (Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)) * 180) / Math.PI;
};

const wellApart = (at: Point, a: Point, b: Point): boolean => {
  const angle = angleBetween(at, a, b);
  return angle >= LEAST_ANGLE && angle <= MOST_ANGLE;
};

/** The pair with the shortest distances among those well apart; null where there is none. */
const shortestPair = (at: Point, from: readonly Reference[]) => {
  const near = from
    .map((r) => ({ ...r, mm: distance(r.at, at) }))
    .filter(({ mm }) => mm >= SHORTEST)
    .sort((a, b) => a.mm - b.mm);
  for (const most of [NEAREST, near.length]) {
    let best: readonly [(typeof near)[number], (typeof near)[number]] | null = null;
    const list = near.slice(0, most);
    for (let i = 0; i < list.length; i++)
      for (let j = i + 1; j < list.length; j++) {
        const [a, b] = [list[i]!, list[j]!];
        if (best !== null && a.mm + b.mm >= best[0].mm + best[1].mm) break;
        if (wellApart(at, a.at, b.at)) best = [a, b];
      }
    if (best !== null) return best;
  }
  return null;
};

/**
 * Two distances that find a place: from pins that are in, else from one of them and the mat, else from
 * the mat alone. From within a mat two of its corners are always well enough apart; from outside it the
 * nearest two references are given whatever their angle.
 */
export const tapeDistances = (
  at: Point,
  pins: readonly Reference[],
  mat: readonly Reference[],
): readonly [TapeDistance, TapeDistance] => {
  const pair = shortestPair(at, pins) ?? shortestPair(at, [...pins, ...mat]);
  const tape = ({ name, at: ref }: Reference): TapeDistance => ({ name, mm: distance(at, ref) });
  if (pair !== null) return [tape(pair[0]), tape(pair[1])];
  const nearest = [...mat].sort((a, b) => distance(a.at, at) - distance(b.at, at));
  return [tape(nearest[0]!), tape(nearest[1]!)];
};
