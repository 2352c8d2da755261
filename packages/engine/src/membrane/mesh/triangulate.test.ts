import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundaryLoops } from './boundary-loops.ts';
import { anyStar, starQuestion } from './check/any-star.ts';
import {
  edgeKey,
  edgeUses,
  pointOf,
  smallCornersOf,
  spansSmallCorner,
} from './check/mesh-facts.ts';
import { BACK, circle, question, ring, SQUARE } from './check/pieces.ts';
import { edgeChains } from './edge-nodes.ts';
import type { Mesh, MeshQuestion, Triangulated, Xy } from './mesh.ts';
import { anglesOf, areaOf, meshQuality } from './mesh-quality.ts';
import { inCircle } from './predicates.ts';
import { distanceToSegment, doubleArea } from './segments.ts';
import { triangulate } from './triangulate.ts';

const RUNS = { numRuns: 120 };

const meshed = (q: MeshQuestion): Triangulated => {
  const result = triangulate(q);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

const forStars = (check: (q: MeshQuestion, result: Triangulated) => void) =>
  fc.assert(
    fc.property(anyStar, (star) => {
      const q = starQuestion(star);
      check(q, meshed(q));
    }),
    RUNS,
  );

/** Seconds on an idle machine; others may share it. */
const PATIENCE = { timeout: 30_000 };

describe('triangle meshes', PATIENCE, () => {
  it('M1: triangles are counter-clockwise and fill the piece exactly', () => {
    forStars((q, { mesh }) => {
      const quality = meshQuality(mesh);
      const wanted =
        Math.abs(doubleArea(q.outer.points)) / 2 -
        q.holes.reduce((sum, h) => sum + Math.abs(doubleArea(h.points)) / 2, 0);
      expect(quality.smallestArea).toBeGreaterThan(0);
      // Rounding of some thousand areas; nodes on edges are off them by less than 1e-13 of a metre.
      expect(Math.abs(quality.area / wanted - 1)).toBeLessThan(1e-11);
    });
  });

  it('M2: V − E + F is 1 − holes, and every edge has one or two triangles', () => {
    forStars((q, { mesh }) => {
      const uses = edgeUses(mesh);
      const characteristic = mesh.points.length / 2 - uses.size + mesh.triangles.length / 3;
      expect(characteristic).toBe(1 - q.holes.length);
      expect([...uses.values()].every((n) => n === 1 || n === 2)).toBe(true);
      expect(boundaryLoops(mesh)).toHaveLength(1 + q.holes.length);
    });
  });

  it('M3: every edge of outline, holes and lines is there whole, with its tag', () => {
    forStars((q, { mesh }) => {
      const uses = edgeUses(mesh);
      const rings = [q.outer, ...q.holes];
      for (const { points, tags } of rings)
        points.forEach((a, i) => {
          const b = points[(i + 1) % points.length]!;
          expectChain(mesh, tags[i]!, a, b, uses, 1);
        });
      for (const { points, tags } of q.lines)
        tags.forEach((tag, i) => {
          expectChain(mesh, tag, points[i]!, points[i + 1]!, uses, 2);
        });
      const border = [...uses.values()].filter((n) => n === 1).length;
      const tagged = mesh.edgeTags.length - q.lines.reduce((n, l) => n + inLine(mesh, l.tags), 0);
      expect(tagged).toBe(border);
    });
  });

  it('M4: angles keep the bound, except across a corner of less than 60°', () => {
    let [thin, strict] = [0, 0];
    forStars((q, { mesh, converged, smallestAngle }) => {
      expect(converged).toBe(true);
      const corners = smallCornersOf(q);
      if (corners.length === 0) {
        strict++;
        expect(smallestAngle).toBeGreaterThanOrEqual(q.minAngle);
      }
      for (let t = 0; t < mesh.triangles.length / 3; t++) {
        // 1e-9°: angles here come by other arithmetic than the test within the refinement.
        if (Math.min(...anglesOf(mesh, t)) >= q.minAngle - 1e-9) continue;
        thin++;
        expect(spansSmallCorner(mesh, t, corners)).toBe(true);
      }
    });
    expect(thin).toBeGreaterThan(0);
    expect(strict).toBeGreaterThan(0);
  });

  it('M5: no node is inside the circle of a triangle across a free edge', () => {
    forStars((_, { mesh }) => {
      expect(deepestInCircle(mesh)).toBeLessThanOrEqual(0);
    });
  });

  it('M6: asked nodes are nodes, on the edge where they were given within the snap of it', () => {
    forStars((q, { mesh, nodeOf }) => {
      q.nodes.forEach((p, i) => {
        const [x, y] = pointOf(mesh, nodeOf[i]!);
        // They were given on the edge by arithmetic, so that moving them onto it is rounding.
        expect(Math.hypot(x - p[0], y - p[1])).toBeLessThan(1e-12 * 300);
      });
    });
    const near = meshed(
      question(SQUARE, {
        nodes: [
          [50, 0.001],
          [99.9995, -0.0005],
          [40, 60],
        ],
      }),
    );
    expect([...near.nodeOf].map((n) => pointOf(near.mesh, n))).toEqual([
      [50, 0],
      [100, 0],
      [40, 60],
    ]);
    expect(near.nodeOf[1]).toBe(1);
  });

  it('M7: the same question gives the same bytes, whatever was meshed between', () => {
    const q = question(BACK, { size: 15 });
    const first = meshed(q);
    meshed(question(SQUARE));
    expect(meshed(q)).toEqual(first);
  });

  it('M7: twice the size gives the same triangles on points twice as far', () => {
    fc.assert(
      fc.property(anyStar, (star) => {
        const twice = (p: Xy): Xy => [2 * p[0], 2 * p[1]];
        const q = starQuestion(star);
        const grown = starQuestion(
          {
            outer: star.outer.map(twice),
            holes: star.holes.map((h) => h.map(twice)),
            lines: star.lines.map((l) => l.map(twice)),
            nodes: star.nodes.map(twice),
          },
          { size: 60 },
        );
        const [one, two] = [meshed(q).mesh, meshed(grown).mesh];
        expect(two.triangles).toEqual(one.triangles);
        expect(two.points).toEqual(one.points.map((v) => 2 * v));
      }),
      { numRuns: 50 },
    );
  });

  it('M7: a ring in the other direction keeps its tags on its edges', () => {
    const points: Xy[] = [
      [0, 0],
      [0, 100],
      [100, 100],
      [100, 0],
    ];
    const { mesh } = meshed({ ...question(SQUARE), outer: { points, tags: [4, 5, 6, 7] } });
    const middles = [4, 5, 6, 7].map((tag) => {
      const nodes = edgeChains(mesh, tag)[0]!;
      const ends = [pointOf(mesh, nodes[0]!), pointOf(mesh, nodes.at(-1)!)];
      return ends.map((p) => p.join(' ')).join(' to ');
    });
    expect(middles).toEqual([
      '0 100 to 0 0',
      '100 100 to 0 100',
      '100 0 to 100 100',
      '0 0 to 100 0',
    ]);
  });

  it('M8: triangles integrate polynomials of the second degree as the closed form does', () => {
    forStars((q, { mesh }) => {
      const closed = [q.outer, ...q.holes].map((r, k) => moments(r.points, k === 0 ? 1 : -1));
      const scale = [1, 300, 300, 9e4, 9e4, 9e4].map((s) => s * closed[0]![0]!);
      integrate(mesh).forEach((value, i) => {
        const wanted = closed.reduce((sum, m) => sum + m[i]!, 0);
        // Rounding of sums over some thousand triangles, against the largest value of each.
        expect(Math.abs(value - wanted)).toBeLessThan(1e-11 * scale[i]!);
      });
    });
  });

  it('M9: a limit of nodes gives a coarser valid mesh that says so', () => {
    const { mesh, converged } = meshed(question(BACK, { size: 5, maxPoints: 500 }));
    expect(converged).toBe(false);
    expect(mesh.points.length / 2).toBeLessThanOrEqual(500);
    expect(meshQuality(mesh).area).toBeCloseTo(Math.abs(doubleArea(BACK)) / 2, 6);
  });

  it('M10: 20,000 nodes stay within 150 MB, half of what a whole pin plan may use', () => {
    const before = process.memoryUsage();
    const { mesh, converged, smallestAngle } = meshed(
      question(BACK, { size: 4.4, maxPoints: 30_000 }),
    );
    const after = process.memoryUsage();
    expect(mesh.points.length / 2).toBeGreaterThan(15_000);
    expect(converged).toBe(true);
    expect(smallestAngle).toBeGreaterThanOrEqual(25);
    const used = after.heapUsed + after.arrayBuffers - before.heapUsed - before.arrayBuffers;
    expect(used).toBeLessThan(150e6);
  });

  it('M4: the largest bound is kept on spiky pieces, with and without a size', () => {
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
      minLength: 6,
      maxLength: 60,
    });
    fc.assert(
      fc.property(shares, fc.constantFrom(20, 100, 1e9), (radii, size) => {
        const spikes = radii.map((share, i): Xy => {
          const angle = (2 * Math.PI * i) / radii.length;
          return [(1 + 300 * share) * Math.cos(angle), (1 + 300 * share) * Math.sin(angle)];
        });
        const q = question(spikes, { size, minAngle: 28 });
        const { mesh, converged } = meshed(q);
        expect(converged).toBe(true);
        const corners = smallCornersOf(q);
        for (let t = 0; t < mesh.triangles.length / 3; t++)
          if (Math.min(...anglesOf(mesh, t)) < 28 - 1e-9)
            expect(spansSmallCorner(mesh, t, corners)).toBe(true);
      }),
      RUNS,
    );
  });

  it('M10: an outline of 15,000 points is meshed', () => {
    const q = question(circle(0, 0, 250, 15_000), { size: 1e9, maxPoints: 100_000 });
    expect(meshed(q).converged).toBe(true);
  });

  it('M4: needles, slits and near-misses end, with all their area', () => {
    const pieces: MeshQuestion[] = [
      question([
        [0, 0],
        [100, 0],
        [100, 1],
      ]),
      question(
        [
          [0, 0],
          [100, 0],
          [100, 0.01],
        ],
        { size: 50 },
      ),
      question([
        [0, 0],
        [100, 50],
        [200, 0],
        [100, 40],
      ]),
      question([
        [0, 0],
        [100, 0],
        [50, 1],
        [100, 2],
        [0, 2],
      ]),
      question(SQUARE, {
        holes: [
          ring(
            [
              [20, 50],
              [80, 50],
              [80, 50.05],
            ],
            10,
          ),
        ],
      }),
      question(SQUARE, { holes: [ring(circle(50, 50, 49.9, 40), 10)] }),
      question(circle(0, 0, 100, 300), { size: 60 }),
      question(SQUARE, {
        nodes: [
          [50, 0.01],
          [50.01, 0.02],
        ],
      }),
    ];
    for (const q of pieces) {
      const { mesh, converged } = meshed(q);
      const holes = q.holes.reduce((sum, h) => sum + Math.abs(doubleArea(h.points)) / 2, 0);
      const wanted = Math.abs(doubleArea(q.outer.points)) / 2 - holes;
      expect(converged).toBe(true);
      // Rounding only, as in M1.
      expect(Math.abs(meshQuality(mesh).area / wanted - 1)).toBeLessThan(1e-11);
      const corners = smallCornersOf(q);
      for (let t = 0; t < mesh.triangles.length / 3; t++)
        if (Math.min(...anglesOf(mesh, t)) < 25 - 1e-9)
          expect(spansSmallCorner(mesh, t, corners)).toBe(true);
    }
  });
});

const inLine = (mesh: Mesh, tags: readonly number[]): number =>
  [...mesh.edgeTags].filter((tag) => tags.includes(tag)).length;

const expectChain = (
  mesh: Mesh,
  tag: number,
  a: Xy,
  b: Xy,
  uses: Map<number, number>,
  triangles: number,
) => {
  const chains = edgeChains(mesh, tag);
  expect(chains).toHaveLength(1);
  const nodes = [...chains[0]!];
  const ends = [pointOf(mesh, nodes[0]!), pointOf(mesh, nodes.at(-1)!)];
  expect([ends, [...ends].reverse()]).toContainEqual([a, b]);
  const off = Math.max(...nodes.map((n) => distanceToSegment(pointOf(mesh, n), a, b)));
  // Rounding of coordinates below 300 mm.
  expect(off).toBeLessThan(1e-12 * 300);
  const used = nodes.slice(1).map((n, i) => uses.get(edgeKey(mesh.points, nodes[i]!, n)));
  expect(used.every((count) => count === triangles)).toBe(true);
};

/** Largest in-circle sign of the far node over every free edge between two triangles. */
const deepestInCircle = (mesh: Mesh): number => {
  const { points, triangles } = mesh;
  const fixed = new Set<number>();
  for (let k = 0; k < mesh.edgeTags.length; k++)
    fixed.add(edgeKey(points, mesh.edges[2 * k]!, mesh.edges[2 * k + 1]!));
  const apexes = new Map<number, number>();
  let deepest = Number.NEGATIVE_INFINITY;
  const at = (t: number) =>
    [0, 1, 2].flatMap((i) => [...pointOf(mesh, triangles[3 * t + i]!)]) as Corners;
  for (let e = 0; e < triangles.length; e++) {
    const [a, b] = [triangles[e]!, triangles[e % 3 === 2 ? e - 2 : e + 1]!];
    const key = edgeKey(points, a, b);
    if (fixed.has(key)) continue;
    const other = apexes.get(key);
    if (other === undefined) apexes.set(key, triangles[e % 3 === 0 ? e + 2 : e - 1]!);
    else deepest = Math.max(deepest, inCircle(...at((e / 3) | 0), ...pointOf(mesh, other)));
  }
  return deepest;
};
type Corners = [number, number, number, number, number, number];

/** ∫ 1, x, y, x², xy, y² by the rule of edge middles, which is exact to the second degree. */
const integrate = (mesh: Mesh): number[] => {
  const sums = [0, 0, 0, 0, 0, 0];
  for (let t = 0; t < mesh.triangles.length / 3; t++) {
    const corners = [0, 1, 2].map((i) => pointOf(mesh, mesh.triangles[3 * t + i]!));
    for (let i = 0; i < 3; i++) {
      const [p, q] = [corners[i]!, corners[(i + 1) % 3]!];
      const [x, y] = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
      [1, x, y, x * x, x * y, y * y].forEach((f, k) => {
        sums[k]! += (f * areaOf(mesh, t)) / 3;
      });
    }
  }
  return sums;
};

/** The same over a polygon by Green's theorem, times `sign` for either direction of the ring. */
const moments = (points: readonly Xy[], sign: number): number[] => {
  const sums = [0, 0, 0, 0, 0, 0];
  const turn = sign * Math.sign(doubleArea(points));
  points.forEach(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    const cross = turn * (x * v - u * y);
    const terms = [
      1 / 2,
      (x + u) / 6,
      (y + v) / 6,
      (x * x + x * u + u * u) / 12,
      (x * v + 2 * x * y + 2 * u * v + u * y) / 24,
      (y * y + y * v + v * v) / 12,
    ];
    terms.forEach((f, k) => {
      sums[k]! += f * cross;
    });
  });
  return sums;
};
