import { expect, test } from 'vitest';
import { RESIDUAL_SHARE, solveMembrane, structuredRectangle } from '../../membrane/index.ts';
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
