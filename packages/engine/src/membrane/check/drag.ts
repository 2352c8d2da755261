import { MembraneSolver } from '../equilibrium.ts';
import type { MembraneQuestion } from '../question.ts';
import { pinnedPiece, sizeFor } from './piece.ts';

/** Size of edges that gives about so many nodes: corrections of the estimate. */
export const sizeWith = (nodes: number): number => {
  let size = sizeFor(nodes);
  for (let k = 0; k < 3; k++) size *= Math.sqrt(pinnedPiece(size).mesh.points.length / 2 / nodes);
  return size;
};

/** The solver of a question; faults are a bug of the benchmark. */
export const solverOf = (question: MembraneQuestion): MembraneSolver => {
  const solver = MembraneSolver.of(question);
  if (!solver.ok) throw new Error(JSON.stringify(solver.faults));
  return solver.value;
};

export const balanced = (solver: MembraneSolver): void => {
  const { converged, gaveWay } = solver.solve();
  if (!converged || gaveWay.length > 0) throw new Error('the piece did not reach its pins');
};

/** Milliseconds of each of 40 warm solves after one pin in five is moved by 2 mm. */
export const dragTimes = (question: MembraneQuestion): number[] => {
  const solver = solverOf(question);
  balanced(solver);
  const { pins } = question;
  return Array.from({ length: 45 }, (_, k) => {
    const moved = pins.map((pin, i) => (i === 3 + (k % 5) ? { ...pin, y: pin.y - 2 } : pin));
    const start = performance.now();
    solver.constrain({ held: [], pins: moved, slides: [] });
    balanced(solver);
    return performance.now() - start;
  }).slice(5);
};
