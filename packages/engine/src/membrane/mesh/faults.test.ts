import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explain } from '../../units/index.ts';
import { circle, openLine, question, ring, SQUARE } from './check/pieces.ts';
import type { MeshQuestion, Xy } from './mesh.ts';
import { meshQuality } from './mesh-quality.ts';
import { doubleArea } from './segments.ts';
import { triangulate } from './triangulate.ts';

const told = (q: MeshQuestion): string[] => {
  const result = triangulate(q);
  return result.ok ? [] : result.faults.map(explain);
};

const withHoles = (...holes: (readonly Xy[])[]) =>
  question(SQUARE, { holes: holes.map((h) => ring(h)) });

const withLine = (points: readonly Xy[], more: Partial<MeshQuestion> = {}) =>
  question(SQUARE, { lines: [openLine(points, 20)], ...more });

const areaInside = (points: readonly Xy[]) => Math.abs(doubleArea(points)) / 2;

/** Seconds on an idle machine; others may share it. */
const PATIENCE = { timeout: 30_000 };

describe('faults of mesh questions', PATIENCE, () => {
  it('M11: an outline that crosses, touches or folds onto itself names both edges', () => {
    expect(
      told(
        question([
          [0, 0],
          [100, 100],
          [100, 0],
          [0, 100],
        ]),
      ),
    ).toEqual([
      'outer: Edge 0 crosses edge 2 (given: (50, 50) mm). Move or drop points until the edges are apart.',
    ]);
    expect(
      told(
        question([
          [0, 0],
          [100, 0],
          [100, 100],
          [50, 0],
          [0, 100],
        ]),
      ),
    ).toEqual([
      'outer: Edge 0 touches edge 3 (given: (50, 0) mm). Move or drop points until the edges are apart.',
    ]);
    expect(
      told(
        question([
          [0, 0],
          [100, 0],
          [50, 0],
          [50, 100],
        ]),
      ),
    ).toEqual([
      'outer: Edge 0 folds back over edge 1 (given: (100, 0) mm). Move or drop points until the edges are apart.',
    ]);
    expect(
      told(
        question([
          [50, 50],
          [0, 50],
          [100, 50],
          [50, 100],
        ]),
      ),
    ).toEqual([
      'outer: Edge 0 folds back over edge 1 (given: (0, 50) mm). Move or drop points until the edges are apart.',
    ]);
    expect(
      told(
        question([
          [100, 0],
          [50, 0],
          [50, 100],
          [0, 0],
        ]),
      ),
    ).toEqual([
      'outer: Edge 0 folds back over edge 3 (given: (100, 0) mm). Move or drop points until the edges are apart.',
    ]);
  });

  it('M11: zero-length edges, too few points and no area', () => {
    expect(
      told(
        question([
          [0, 0],
          [100, 0],
          [100, 0],
          [0, 100],
        ]),
      ),
    ).toEqual([
      'outer.points: Edge 1 has no length (given: (100, 0) mm). Drop one of the two points that coincide.',
    ]);
    expect(
      told(
        question([
          [0, 0],
          [100, 0],
          [0, 100],
          [0, 0],
        ]),
      ),
    ).toEqual([
      'outer.points: Edge 3 has no length (given: (0, 0) mm). Drop one of the two points that coincide.',
    ]);
    expect(
      told(
        question([
          [0, 0],
          [100, 0],
        ]),
      ),
    ).toEqual(['outer.points: There are fewer than 3 points (given: 2). Give at least 3 points.']);
    expect(told(withLine([[10, 10]]))).toEqual([
      'lines[0].points: There are fewer than 2 points (given: 1). Give at least 2 points.',
    ]);
    expect(
      told(
        question([
          [0, 0],
          [100, 100],
          [50, 50],
        ]),
      ),
    ).toEqual([
      'outer.points: All points lie on one line, so there is no area. Move a point off the line.',
    ]);
    expect(
      told(
        withHoles([
          [10, 10],
          [20, 10],
          [30, 10],
        ]),
      ),
    ).toEqual([
      'holes[0].points: All points lie on one line, so there is no area. Move a point off the line.',
    ]);
    expect(told(question([]))).toEqual([
      'outer.points: There are fewer than 3 points (given: 0). Give at least 3 points.',
    ]);
  });

  it('M11: holes that are outside, touch, cross or lie in each other', () => {
    const mend = 'Move the hole wholly inside the piece, or leave it out.';
    expect(told(withHoles(circle(200, 50, 10, 8)))).toEqual([
      `holes[0]: The hole is outside the piece (given: (210, 50) mm). ${mend}`,
    ]);
    expect(
      told(
        withHoles([
          [50, 0],
          [60, 20],
          [40, 20],
        ]),
      ),
    ).toEqual([`holes[0]: Edge 2 touches edge 0 of outer (given: (50, 0) mm). ${mend}`]);
    expect(
      told(
        withHoles([
          [50, -10],
          [60, 20],
          [40, 20],
        ]),
      ),
    ).toEqual([`holes[0]: Edge 2 crosses edge 0 of outer (given: (46.6667, 0) mm). ${mend}`]);
    expect(
      told(
        withHoles(
          [
            [20, 20],
            [40, 20],
            [40, 40],
          ],
          [
            [30, 10],
            [60, 10],
            [30, 60],
          ],
        ),
      ),
    ).toEqual([`holes[1]: Edge 2 crosses edge 0 of holes[0] (given: (30, 20) mm). ${mend}`]);
    expect(told(withHoles(circle(50, 50, 10, 8), circle(50, 50, 20, 8)))).toEqual([
      `holes[0]: The hole is inside holes[1] (given: (60, 50) mm). ${mend}`,
    ]);
  });

  it('M11: nodes and lines outside the piece, and lines that cross', () => {
    const move = 'Move it onto the piece or its edge.';
    expect(
      told(
        question(SQUARE, {
          nodes: [
            [50, 50],
            [50, -1],
          ],
        }),
      ),
    ).toEqual([`nodes[1]: The node is outside the piece (given: (50, -1) mm). ${move}`]);
    const hole = { holes: [ring(circle(50, 50, 10, 8), 10)] };
    expect(told(question(SQUARE, { ...hole, nodes: [[50, 51]] }))).toEqual([
      `nodes[0]: The node is outside the piece (given: (50, 51) mm). ${move}`,
    ]);
    expect(
      told(
        withLine([
          [50, 50],
          [150, 50],
        ]),
      ),
    ).toEqual([
      'lines[0]: Edge 0 crosses edge 1 of outer (given: (100, 50) mm). Move or drop points until the edges are apart.',
    ]);
    expect(
      told(
        withLine([
          [120, 50],
          [150, 50],
        ]),
      ),
    ).toEqual([
      `lines[0].points[0]: The point is outside the piece (given: (120, 50) mm). ${move}`,
      `lines[0].points[1]: The point is outside the piece (given: (150, 50) mm). ${move}`,
    ]);
    const notch: Xy[] = [
      [0, 0],
      [50, 50],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    expect(
      told(
        question(notch, {
          lines: [
            openLine(
              [
                [0, 0],
                [100, 0],
              ],
              20,
            ),
          ],
        }),
      ),
    ).toEqual([`lines[0]: The line is outside the piece (given: (50, 0) mm). ${move}`]);
    const two = [
      openLine(
        [
          [10, 50],
          [90, 50],
        ],
        20,
      ),
      openLine(
        [
          [50, 10],
          [50, 90],
        ],
        30,
      ),
    ];
    expect(told(question(SQUARE, { lines: two }))).toEqual([
      'lines[1]: Edge 0 crosses edge 0 of lines[0] (given: (50, 50) mm). Move or drop points until the edges are apart.',
    ]);
  });

  it('M11: numbers, tags and settings', () => {
    expect(
      told(
        question([
          [0, 0],
          [Number.NaN, 0],
          [0, 100],
        ]),
      ),
    ).toEqual([
      'outer.points[1]: This is not a finite number (given: NaN,0). Give both coordinates in mm.',
    ]);
    expect(told(question(SQUARE, { nodes: [[1, Number.POSITIVE_INFINITY]] }))).toEqual([
      'nodes[0]: This is not a finite number (given: 1,Infinity). Give both coordinates in mm.',
    ]);
    expect(told({ ...question(SQUARE), outer: { points: SQUARE, tags: [1, 2, 3] } })).toEqual([
      'outer.tags: The tags do not match the edges (given: 3). Give 4 whole numbers, one for each edge.',
    ]);
    expect(told({ ...question(SQUARE), outer: { points: SQUARE, tags: [1, 2, 3, 0.5] } })).toEqual([
      'outer.tags: The tags do not match the edges (given: 1,2,3,0.5). Give 4 whole numbers, one for each edge.',
    ]);
    for (const size of [0, -1, Number.NaN])
      expect(told(question(SQUARE, { size }))).toEqual([
        `size: The wanted edge length is not positive (given: ${size}). Give a length above 0 mm.`,
      ]);
    expect(told(question(SQUARE, { size: (x) => 10 - x }))).toEqual([
      'size: The wanted edge length is not positive (given: -90 at (100, 0) mm). Give a length above 0 mm.',
    ]);
    for (const minAngle of [-1, 29, Number.NaN])
      expect(told(question(SQUARE, { minAngle }))).toEqual([
        `minAngle: The smallest angle cannot be kept to (given: ${minAngle}). Give 0 to 28 degrees.`,
      ]);
    for (const maxPoints of [3, 200_001, 10.5, Number.NaN])
      expect(told(question(SQUARE, { maxPoints }))).toEqual([
        `maxPoints: This many nodes cannot hold the piece (given: ${maxPoints}). Give a whole number from 4 to 200000.`,
      ]);
  });

  it('M12: what lines may do: end on edges, pass corners, run along edges, meet, close', () => {
    const fine: MeshQuestion[] = [
      withLine([
        [0, 30],
        [100, 30],
      ]),
      withLine([
        [0, 0],
        [100, 100],
      ]),
      withLine([
        [0, 0],
        [50, 0],
        [50, 50],
      ]),
      withLine([
        [30, 30],
        [60, 30],
        [60, 60],
        [30, 30],
      ]),
      question(SQUARE, {
        lines: [
          openLine(
            [
              [10, 50],
              [90, 50],
            ],
            20,
          ),
          openLine(
            [
              [50, 50],
              [50, 90],
            ],
            30,
          ),
        ],
      }),
      question(SQUARE, {
        lines: [
          openLine(
            [
              [10, 50],
              [90, 50],
            ],
            20,
          ),
          openLine(
            [
              [40, 50],
              [70, 50],
            ],
            30,
          ),
        ],
      }),
    ];
    for (const q of fine) {
      const result = triangulate(q);
      expect(result.ok && result.value.converged).toBe(true);
      if (result.ok) expect(meshQuality(result.value.mesh).area).toBeCloseTo(1e4, 8);
    }
  });

  it('M12: any points on a small grid, where most things coincide, give a whole mesh or faults', () => {
    const point = fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 }));
    const points = (minLength: number, maxLength: number) =>
      fc.array(point, { minLength, maxLength });
    const counts = { meshes: 0, faults: 0 };
    fc.assert(
      fc.property(
        points(3, 7),
        fc.array(points(3, 4), { maxLength: 1 }),
        fc.array(points(2, 4), { maxLength: 2 }),
        points(0, 2),
        (outer, holes, lines, nodes) => {
          const result = triangulate({
            ...question(outer, { nodes, size: 3, maxPoints: 2000 }),
            holes: holes.map((h) => ring(h)),
            lines: lines.map((l) => openLine(l, 0)),
          });
          if (!result.ok) {
            counts.faults++;
            expect(result.faults.length).toBeGreaterThan(0);
            return;
          }
          counts.meshes++;
          expect(result.value.converged).toBe(true);
          const quality = meshQuality(result.value.mesh);
          const wanted = areaInside(outer) - holes.reduce((sum, h) => sum + areaInside(h), 0);
          expect(quality.smallestArea).toBeGreaterThan(0);
          // Snapping moves nodes by up to 0.0001 mm here; none does on whole numbers. Rounding only.
          expect(Math.abs(quality.area - wanted)).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 10_000 },
    );
    expect(counts.meshes).toBeGreaterThan(100);
    expect(counts.faults).toBeGreaterThan(100);
  });
});
