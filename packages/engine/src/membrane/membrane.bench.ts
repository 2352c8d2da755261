import { balanced, dragTimes, sizeWith, solverOf } from './check/drag.ts';
import { pinnedPiece } from './check/piece.ts';
import type { MembraneSolver } from './equilibrium.ts';
import { solveNested } from './nested.ts';
import type { MembraneQuestion } from './question.ts';
import { analyse, factorise, patternFromTriangles, sparseBackend } from './sparse/index.ts';

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

const median = (times: number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1]!;

/** Mesh, analysis and solution from rest. */
const cold = (size: number): MembraneSolver => {
  const solver = solverOf(pinnedPiece(size));
  balanced(solver);
  return solver;
};

/** One plain factorisation of a matrix with the pattern of the question: ones, and their sums. */
const plainFactorisation = (question: MembraneQuestion): (() => void) => {
  const nodes = question.mesh.points.length / 2;
  const { pattern } = patternFromTriangles(question.mesh.triangles, nodes, 2);
  const symbolic = analyse(pattern, 2);
  const values = new Float64Array(pattern.rowIdx.length).fill(-1);
  for (let j = 0; j < pattern.n; j++) values[pattern.colPtr[j + 1]! - 1] = 40;
  const backend = sparseBackend('plain');
  return () => factorise(symbolic, values, { backend });
};

/** Slope of log time by log nodes, least squares. */
const exponentOf = (points: readonly (readonly [number, number])[]): number => {
  const logs = points.map(([n, ms]) => [Math.log(n), Math.log(ms)] as const);
  const mean = (k: 0 | 1) => logs.reduce((sum, p) => sum + p[k], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const over = logs.reduce((sum, p) => sum + (p[0] - x) * (p[1] - y), 0);
  return over / logs.reduce((sum, p) => sum + (p[0] - x) ** 2, 0);
};

/** Meshes from which finer ones are begun, by nodes. */
const COARSER = [500, 1500, 5000];

/** Cold solve by way of coarser meshes, their meshing and analysis included. */
const nested = (edges: readonly number[], last: number): void => {
  const solved = solveNested([...edges, last].map(pinnedPiece));
  if (!solved.ok || !solved.value.converged) throw new Error('bench: the piece came to no rest');
};

const SIZES = [500, 1000, 2000, 5000, 10_000, 20_000];

export const bench = async () => {
  const size = sizeWith(2000);
  const question = pinnedPiece(size);
  const nodes = question.mesh.points.length / 2;
  const plain = plainFactorisation(question);
  const [colds, plains]: [number[], number[]] = [[], []];
  for (let k = 0; k < 9; k++) {
    const [whole, one] = [timed(() => cold(size)), timed(plain)];
    if (k < 2) continue;
    colds.push(whole);
    plains.push(one);
  }
  const coldMs = median(colds);
  const dragMs = median(dragTimes(question));
  const scaling = SIZES.map((wanted) => {
    const edge = sizeWith(wanted);
    const count = pinnedPiece(edge).mesh.points.length / 2;
    const coarser = COARSER.filter((nodes) => nodes <= wanted / 3).map(sizeWith);
    return [count, Math.min(...[0, 1, 2].map(() => timed(() => nested(coarser, edge))))] as const;
  });
  const [least, largest] = [scaling[0]!, scaling[scaling.length - 1]!];
  return [
    {
      name: 'membrane-cold-2000',
      ms: coldMs,
      ratio: coldMs / median(plains),
      against: `one plain TypeScript factorisation of the same ${2 * nodes} unknowns`,
      nodes,
    },
    {
      name: 'membrane-drag-2000',
      ms: dragMs,
      ratio: dragMs / coldMs,
      against: 'the cold solve with its mesh in the same run',
      nodes,
    },
    {
      name: 'membrane-scaling',
      ms: largest[1],
      ratio: largest[1] / least[1],
      against: `the cold solve of ${least[0]} nodes, this one of ${largest[0]} by way of coarser meshes`,
      exponent: exponentOf(scaling),
      nodes: scaling.map(([count]) => count),
      times: scaling.map(([, ms]) => ms),
    },
  ];
};
