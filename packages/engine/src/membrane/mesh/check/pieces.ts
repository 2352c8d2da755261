import fc from 'fast-check';
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

/** The parts of a random piece, in mm. */
interface Star {
  readonly outer: readonly Xy[];
  readonly holes: readonly (readonly Xy[])[];
  readonly lines: readonly (readonly Xy[])[];
  readonly nodes: readonly Xy[];
}

const starRing = (count: number, shares: readonly number[], low: number, high: number): Xy[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * (i + 0.7 * (shares[2 * i]! - 0.5))) / count;
    const radius = low + (high - low) * shares[2 * i + 1]!;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

const moved = (points: readonly Xy[], x: number, y: number): Xy[] =>
  points.map(([px, py]) => [px + x, py + y]);

const shares = (count: number) =>
  fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: count, maxLength: count });

/**
 * Random star-shaped pieces about the origin, 100 to 300 mm in radius, with up to three holes of 5
 * to 10 mm within 40 mm of it, lines from corners half-way to the origin and nodes on edges.
 */
export const anyStar: fc.Arbitrary<Star> = fc
  .record({
    count: fc.integer({ min: 6, max: 30 }),
    outline: shares(60),
    holes: fc.array(shares(16), { maxLength: 3 }),
    lines: fc.integer({ min: 0, max: 3 }),
    pins: fc.integer({ min: 0, max: 5 }),
  })
  .map(({ count, outline, holes, lines, pins }) => {
    const outer = starRing(count, outline, 100, 300);
    return {
      outer,
      holes: holes.map((s, k) => {
        const angle = (2 * Math.PI * k) / 3;
        return moved(starRing(8, s, 5, 10), 25 * Math.cos(angle), 25 * Math.sin(angle));
      }),
      lines: outer.slice(0, lines).map((p): Xy[] => [p, [p[0] / 2, p[1] / 2]]),
      nodes: outer.slice(0, pins).map((p, i): Xy => {
        const q = outer[(i + 1) % count]!;
        return [0.7 * p[0] + 0.3 * q[0], 0.7 * p[1] + 0.3 * q[1]];
      }),
    };
  });

export const HOLE_TAGS = 1000;
export const LINE_TAGS = 10_000;

export const starQuestion = (star: Star, more: Partial<MeshQuestion> = {}): MeshQuestion =>
  question(star.outer, {
    holes: star.holes.map((h, i) => ring(h, HOLE_TAGS * (i + 1))),
    lines: star.lines.map((l, i) => openLine(l, LINE_TAGS * (i + 1))),
    nodes: star.nodes,
    size: 30,
    ...more,
  });
