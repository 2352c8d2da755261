import { expect, test } from 'vitest';
import { RESIDUAL_SHARE, solveMembrane, structuredRectangle } from '../../membrane/index.ts';
import { EVALUATED, W } from '../../membrane/material.ts';
import { relaxation } from '../../membrane/relaxation.ts';
import { randomSource } from '../../stats/index.ts';
import type { Direction } from '../specimen.ts';
import { loadAt } from '../stretch/law.ts';
import { fabricMaterial } from './fabric-material.ts';
import { narrowingAt } from './plane.ts';

const SIDE = 100;
const CELLS = 4;

const acrylic = (stitch: 'stockinette' | 'garter' | 'rib-1x1' | 'seed') =>
  fabricMaterial(
    {
      stitch,
      fibres: [{ fibre: 'acrylic', share: 1 }],
      treatment: 'unknown',
      washing: 'not-said',
      specimens: [],
    },
    'dry',
  );

/** A square with its courses level, its border held at `wide` by `high` times its size, the inside free. */
const stretched = (fabric: ReturnType<typeof acrylic>, wide: number, high: number) => {
  const mesh = structuredRectangle(SIDE, SIDE, CELLS, CELLS, 'alternate');
  const held = Array.from({ length: mesh.points.length / 2 }, (_, node) => ({
    node,
    x: mesh.points[2 * node]!,
    y: mesh.points[2 * node + 1]!,
  }))
    .filter(({ x, y }) => [x, y].some((at) => at === 0 || at === SIDE))
    .map(({ node, x, y }) => ({ node, x: x * wide, y: y * high }));
  return solveMembrane({
    mesh,
    held,
    pins: [],
    slides: [],
    directions: new Float64Array(mesh.triangles.length / 3),
    materialOf: new Uint16Array(mesh.triangles.length / 3),
    materials: [fabric.sheet],
    cords: [],
  });
};

test.each(
  (['stockinette', 'garter', 'rib-1x1', 'seed'] as const).flatMap((stitch) =>
    (['width', 'length'] as const).map((d) => [stitch, d] as const),
  ),
)('MA1: in the membrane %s as narrow as foretold carries the law of a strip in %s', (stitch, d) => {
  const fabric = acrylic(stitch);
  const strain = 0.15;
  const narrow = 1 - narrowingAt(fabric.constants, d, strain);
  const [wide, high] = d === 'width' ? [1 + strain, narrow] : [narrow, 1 + strain];
  const solved = stretched(fabric, wide, high);
  if (!solved.ok) throw new Error(solved.faults.map(({ problem }) => problem).join('; '));
  const { converged, stretch, stress } = solved.value;
  expect(converged).toBe(true);
  // Load per width at rest is λ S. The membrane's own residual tension, a share of √(Y₁Y₂), pulls both
  // ways; coupled, it shows several times over where one direction is far stiffer.
  const { along1, along2 } = fabric.sheet;
  const residual = RESIDUAL_SHARE * Math.sqrt(along1.stiffness(0) * along2.stiffness(0));
  const load = (t: number, along: Direction) => {
    const k = along === 'width' ? 0 : 1;
    return stretch[3 * t + k]! * stress[3 * t + k]!;
  };
  for (let t = 0; t < stretch.length / 3; t++) {
    expect(Math.abs(load(t, d) - loadAt(fabric.constants[d], strain))).toBeLessThan(20 * residual);
    expect(Math.abs(load(t, d === 'width' ? 'length' : 'width'))).toBeLessThan(20 * residual);
  }
  // A check that could not tell the law from nothing would be none.
  expect(loadAt(fabric.constants[d], strain)).toBeGreaterThan(20 * residual);
});

/** Twice the area of each triangle, above 0 where it lies face up. */
const turns = (triangles: Uint32Array, points: Float64Array): number[] =>
  Array.from({ length: triangles.length / 3 }, (_, t) => {
    const at = (k: number) => 2 * triangles[3 * t + k]!;
    const [a, b, c] = [at(0), at(1), at(2)];
    const [ux, uy] = [points[b]! - points[a]!, points[b + 1]! - points[a + 1]!];
    const [vx, vy] = [points[c]! - points[a]!, points[c + 1]! - points[a + 1]!];
    return ux * vy - uy * vx;
  });

test.each(
  (['wool', 'acrylic', 'cotton'] as const).flatMap((fibre) =>
    [1.3, 1.5, 1.7, 2].map((times) => [fibre, times] as const),
  ),
)(
  'ME19: a strip of %s rib pulled to %f times its length between sliding ends is not turned over',
  (fibre, times) => {
    const [width, height] = [60, 120];
    const mesh = structuredRectangle(width, height, 4, 12, 'alternate');
    const ends = Array.from({ length: mesh.points.length / 2 }, (_, node) => node).filter((node) =>
      [0, height].includes(mesh.points[2 * node + 1]!),
    );
    const slides = ends.map((node) => {
      const y = times * mesh.points[2 * node + 1]!;
      return { node, ax: 0, ay: y, bx: 1, by: y };
    });
    const { sheet } = fabricMaterial(
      {
        stitch: 'rib-1x1',
        fibres: [{ fibre, share: 1 }],
        treatment: 'untreated',
        washing: 'by-hand',
        specimens: [],
      },
      'wet',
    );
    const count = mesh.triangles.length / 3;
    const solved = solveMembrane({
      mesh,
      held: [],
      pins: [],
      slides,
      directions: new Float64Array(count),
      materialOf: new Uint16Array(count),
      materials: [sheet],
      cords: [],
    });
    if (!solved.ok) throw new Error(solved.faults.map(({ problem }) => problem).join('; '));
    const { converged, points } = solved.value;
    const over = turns(mesh.triangles, points).filter((turn) => turn < 0).length;
    if (converged) expect(over).toBe(0);
    // Short of its end, which is at 1.8, it comes to rest.
    if (times < 1.6) expect(converged).toBe(true);
  },
);

test('ME4: no crumpled ribbing is without energy, short of its end', () => {
  const out = new Float64Array(EVALUATED);
  const wrinkle = new Float64Array(2);
  for (const fibre of ['wool', 'acrylic', 'cotton'] as const) {
    const { sheet } = fabricMaterial(
      {
        stitch: 'rib-1x1',
        fibres: [{ fibre, share: 1 }],
        treatment: 'untreated',
        washing: 'by-hand',
        specimens: [],
      },
      'wet',
    );
    const { relax } = relaxation(sheet);
    const { uniform } = randomSource(15);
    for (let k = 0; k < 4500; k++) {
      const stretch = (limit: number) => (1 + 0.9 * limit) * uniform();
      const [a, b] = [stretch(sheet.along1.limit), stretch(sheet.along2.limit)];
      wrinkle.fill(0);
      relax(a * a, b * b, a * b * (2 * uniform() - 1), wrinkle, 0, out);
      expect(Number.isFinite(out[W])).toBe(true);
    }
  }
});
