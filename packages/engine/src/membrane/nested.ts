import { ok, type Result } from '../units/index.ts';
import { MembraneSolver } from './equilibrium.ts';
import type { Mesh } from './mesh/mesh.ts';
import { type Located, type PointLocation, pointLocation } from './mesh/point-location.ts';
import type { Equilibrium, MembraneQuestion, OnStep } from './question.ts';

export interface NestedEquilibrium extends Equilibrium {
  /** Newton steps on each mesh, coarse to fine; `iterations` is that of the finest. */
  readonly perLevel: readonly number[];
  /** Levels whose carried start was beyond a limit, so that they began at rest after all. */
  readonly fromRest: readonly number[];
}

/**
 * The same piece on finer and finer meshes, each begun where the one before it came to rest. Near a
 * point that is held, strain rises as meshes get finer, and Newton's method from rest takes more and
 * more steps there; begun from a coarser answer it does not. The answer is that of the last question
 * by itself. Friction holds nodes where they start, so a question with friction is refused as a bug.
 */
export const solveNested = (
  questions: readonly MembraneQuestion[],
  onStep?: OnStep,
): Result<NestedEquilibrium> => {
  if (questions.length === 0 || questions.some((q) => (q.friction ?? 0) > 0))
    throw new RangeError('nested: wants questions without friction');
  const perLevel: number[] = [];
  const fromRest: number[] = [];
  let last: { readonly mesh: Mesh; readonly found: Equilibrium } | null = null;
  for (const [level, question] of questions.entries()) {
    const start: Float64Array | null =
      last === null ? null : carriedStart(last.mesh, last.found.points, question.mesh);
    const solved = solveFrom(question, start, onStep);
    if (!solved.ok) return solved;
    if (start !== null && solved.value.restarted) fromRest.push(level);
    last = { mesh: question.mesh, found: solved.value.found };
    perLevel.push(solved.value.found.iterations);
  }
  return ok({ ...last!.found, perLevel, fromRest });
};

/** From the start, and where the sheet is beyond its limit there, from rest. */
const solveFrom = (
  question: MembraneQuestion,
  start: Float64Array | null,
  onStep?: OnStep,
): Result<{ readonly found: Equilibrium; readonly restarted: boolean }> => {
  if (start !== null) {
    const near = MembraneSolver.of({ ...question, start });
    if (!near.ok) return near;
    const found = near.value.solve(onStep);
    if (found.converged || found.stopped) return ok({ found, restarted: false });
  }
  const solver = MembraneSolver.of(question);
  return solver.ok ? ok({ found: solver.value.solve(onStep), restarted: start !== null }) : solver;
};

/** Places of the fine mesh's nodes when each moves as the coarse sheet does at its place at rest. */
export const carriedStart = (coarse: Mesh, points: Float64Array, fine: Mesh): Float64Array => {
  const location = pointLocation(coarse);
  const start = fine.points.slice();
  for (let i = 0; i < start.length; i += 2) {
    const at = holding(location, start[i]!, start[i + 1]!);
    if (at === undefined) continue;
    for (const axis of [0, 1] as const) start[i + axis]! += moved(coarse, points, at, axis);
  }
  return start;
};

const moved = (mesh: Mesh, points: Float64Array, at: Located, axis: 0 | 1): number =>
  at.weights.reduce((sum, weight, corner) => {
    const k = 2 * mesh.triangles[3 * at.triangle + corner]! + axis;
    return sum + weight * (points[k]! - mesh.points[k]!);
  }, 0);

/** Nodes on an edge may lie a rounding outside: a micrometre around finds the triangle. */
const AROUND = [0, 1e-3, -1e-3];

const holding = (location: PointLocation, x: number, y: number): Located | undefined => {
  for (const dx of AROUND)
    for (const dy of AROUND) {
      const at = location.at(x + dx, y + dy);
      if (at !== undefined) return at;
    }
  return undefined;
};
