import type { Direction } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import type { DimensionToReach, PieceToBlock } from './types.ts';

export const placeOf = (outline: readonly Point[], at: number | Point): Point =>
  typeof at === 'number' ? outline[at]! : at;

/** A dimension as a stretch along one axis, at a level across it. */
interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly level: number;
  readonly factor: number;
}

const stretches = (piece: PieceToBlock, direction: Direction): Stretch[] =>
  piece.dimensions
    .filter((each) => each.direction === direction)
    .flatMap((each) => {
      const [a, b] = [placeOf(piece.outline, each.from), placeOf(piece.outline, each.to)];
      const [u, v] = direction === 'width' ? [a.x, b.x] : [a.y, b.y];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const level = direction === 'width' ? (a.y + b.y) / 2 : (a.x + b.x) / 2;
      const low = Math.min(u, v);
      const high = Math.max(u, v);
      return high > low ? [{ low, high, level, factor: each.targetMm / length }] : [];
    });

/**
 * Heights: between the levels at which dimensions begin or end, the factor of the shortest dimension
 * that spans there, as a longer one says nothing of its parts; then each longer one corrects what is
 * left of its span to no other. Outside all, the nearest factor.
 */
const heights = (all: readonly Stretch[]): ((y: number) => number) => {
  const levels = [...new Set(all.flatMap(({ low, high }) => [low, high]))].sort((a, b) => a - b);
  if (levels.length < 2) return (y) => y;
  const sorted = [...all].sort((a, b) => a.high - a.low - (b.high - b.low));
  const factors: (number | null)[] = levels.slice(1).map(() => null);
  for (const { low, high, factor } of sorted) {
    const within = factors.map((_, k) => levels[k]! >= low && levels[k + 1]! <= high);
    const size = (k: number) => levels[k + 1]! - levels[k]!;
    let [open, taken] = [0, 0];
    factors.forEach((known, k) => {
      if (!within[k]) return;
      if (known === null) open += size(k);
      else taken += known * size(k);
    });
    if (open === 0) continue;
    const left = (factor * (high - low) - taken) / open;
    // What is left of a span may contradict its parts; then it is scaled as a whole.
    const fits = left > factor / 2 && left < 2 * factor ? left : factor;
    factors.forEach((known, k) => {
      if (within[k] && known === null) factors[k] = fits;
    });
  }
  return (y) => {
    let at = levels[0]!;
    if (y < at) return at + (y - at) * (factors[0] ?? 1);
    for (let k = 0; k < factors.length; k++) {
      const [from, to, factor] = [levels[k]!, levels[k + 1]!, factors[k] ?? 1];
      if (y <= to) return at + (y - from) * factor;
      at += (to - from) * factor;
    }
    return at + (y - levels.at(-1)!) * (factors.at(-1) ?? 1);
  };
};

/** Widths: the factor at a level lies evenly between those of the nearest widths above and below. */
const widths = (all: readonly Stretch[]): ((y: number) => number) => {
  const byLevel = [...all]
    .sort((a, b) => b.high - b.low - (a.high - a.low))
    .filter((each, k, list) => list.findIndex((o) => o.level === each.level) === k)
    .sort((a, b) => a.level - b.level);
  return (y) => {
    const below = byLevel.findLast(({ level }) => level <= y);
    const above = byLevel.find(({ level }) => level >= y);
    if (below === undefined || above === undefined) return (below ?? above)?.factor ?? 1;
    if (below === above) return below.factor;
    const share = (y - below.level) / (above.level - below.level);
    return below.factor + share * (above.factor - below.factor);
  };
};

/** Where the points of the outline go when only its dimensions are known: each scaled by its own. */
const fromDimensions = (piece: PieceToBlock): readonly Point[] => {
  const height = heights(stretches(piece, 'length'));
  const width = widths(stretches(piece, 'width'));
  const xs = piece.outline.map(({ x }) => x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  return piece.outline.map(({ x, y }) => ({
    x: middle + (x - middle) * width(y),
    y: height(y),
  }));
};

/** The outline wanted, point by point of the rest outline. */
export const wantedOf = (piece: PieceToBlock): readonly Point[] =>
  piece.wanted ?? fromDimensions(piece);

/** Half a centimetre or a hundredth, whichever is more: what a tape on a mat tells. Common practice. */
export const toleranceOf = ({ toleranceMm, targetMm }: DimensionToReach): number =>
  toleranceMm ?? Math.max(5, 0.01 * targetMm);
