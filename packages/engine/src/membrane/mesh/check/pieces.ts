import type { MeshQuestion, OutlineRing, Xy } from '../mesh.ts';

/** A ring whose edges carry the tags `from`, `from` + 1, … */
export const ring = (points: readonly Xy[], from = 0): OutlineRing => ({
  points,
  tags: points.map((_, i) => from + i),
});

/** An open line whose edges carry the tags `from`, `from` + 1, … */
export const openLine = (points: readonly Xy[], from: number): OutlineRing => ({
  points,
  tags: points.slice(1).map((_, i) => from + i),
});

export const SQUARE: readonly Xy[] = [
  [0, 0],
  [100, 0],
  [100, 100],
  [0, 100],
];

export const question = (
  outer: readonly Xy[],
  more: Partial<Omit<MeshQuestion, 'outer'>> = {},
): MeshQuestion => ({
  outer: ring(outer),
  holes: [],
  lines: [],
  nodes: [],
  size: 10,
  minAngle: 25,
  maxPoints: 20_000,
  ...more,
});

export const circle = (x: number, y: number, radius: number, count: number): Xy[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Points on an ellipse about (x, y) from one angle to another, degrees, its ends left out. */
const arc = (x: number, y: number, a: number, b: number, from: number, to: number): Xy[] =>
  Array.from({ length: 23 }, (_, i) => {
    const angle = ((from + ((to - from) * (i + 1)) / 24) * Math.PI) / 180;
    return [x + a * Math.cos(angle), y + b * Math.sin(angle)];
  });

/** An invented back of a garment, 520 × 630 mm: hem, sides, curved armholes, shoulders, neck. */
export const BACK: readonly Xy[] = [
  [0, 0],
  [520, 0],
  [520, 380],
  ...arc(520, 600, 45, 220, 270, 180),
  [475, 600],
  [350, 630],
  ...arc(260, 630, 90, 60, 360, 180),
  [170, 630],
  [45, 600],
  ...arc(0, 600, 45, 220, 0, -90),
  [0, 380],
];
