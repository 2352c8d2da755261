import fc from 'fast-check';
import type { MeshQuestion, Xy } from '../mesh.ts';
import { openLine, question, ring } from './pieces.ts';

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
