import { expect, test } from 'vitest';
import { pinnedPiece, sizeFor } from './check/piece.ts';
import { solveMembrane } from './equilibrium.ts';
import { carriedStart, solveNested } from './nested.ts';

const [coarse, fine] = [pinnedPiece(sizeFor(300)), pinnedPiece(sizeFor(1200))];

test('ME21: begun from a coarser mesh the answer is that of the fine mesh alone', () => {
  const alone = solveMembrane(fine);
  const nested = solveNested([coarse, fine]);
  if (!alone.ok || !nested.ok) throw new Error('the piece has faults');
  expect(nested.value.converged).toBe(true);
  expect(nested.value.perLevel).toHaveLength(2);
  // Equilibrium is one place; both are found to the solver's tolerance on force, 1e-8 of its unit.
  nested.value.points.forEach((x, k) => {
    expect(Math.abs(x - alone.value.points[k]!)).toBeLessThan(1e-4);
  });
});

test('ME22: a carried start moves every node as the coarse sheet does', () => {
  const grown = coarse.mesh.points.map((x) => 1.08 * x);
  const start = carriedStart(coarse.mesh, grown, fine.mesh);
  // A sheet grown evenly is linear in place, so weights give it exactly but for the nodes that are
  // looked up a micrometre aside: 0.08 of that.
  start.forEach((x, k) => {
    expect(Math.abs(x - 1.08 * fine.mesh.points[k]!)).toBeLessThan(2e-4);
  });
});

test('friction holds nodes where they start, so nesting refuses it', () => {
  expect(() => solveNested([{ ...coarse, friction: 1e-5 }])).toThrow(/friction/);
});
