import { fail, ok } from '../../units/index.ts';
import { arrange } from './arrange.ts';
import { checkQuestion } from './check-question.ts';
import { checkedSize } from './checked-size.ts';
import { collect } from './collect.ts';
import { constrainedDelaunay } from './constrained.ts';
import { divide } from './divide.ts';
import { sizeFault, tangledFault } from './faults.ts';
import type { MeshQuestion, MeshResult } from './mesh.ts';
import { smallestAngleOf } from './mesh-quality.ts';
import { refine } from './refine.ts';

/** Slots to begin with; they grow. */
const FIRST_NODES = 1024;

/**
 * Quality triangle mesh of a flat piece. Edges are divided to the wanted size, triangulated and
 * refined; the same question gives the same bytes. Free edges are Delaunay: no node is inside the
 * circle of a triangle that sees it. Edges come in the order given, outline first, each along its
 * own way. A question that cannot be meshed gives faults; a limit of nodes that is too low gives a
 * valid, coarser mesh with `converged` false.
 */
export const triangulate = (q: MeshQuestion): MeshResult => {
  const faults = checkQuestion(q);
  if (faults.length > 0) return fail(...faults);
  const arranged = arrange(q);
  if (!arranged.ok) return arranged;
  const { size, trouble } = checkedSize(q.size);
  const divided = divide(arranged.value, size, q.maxPoints);
  const mesh = constrainedDelaunay(divided, Math.max(FIRST_NODES, 2 * divided.points.length));
  if (!mesh) return fail(tangledFault(q.lines.length > 0 ? 'lines' : 'outer'));
  const { converged } = refine(mesh, divided, size, q.minAngle, q.maxPoints);
  const given = trouble();
  if (given !== undefined) return fail(sizeFault(given));
  const result = collect(mesh, divided, arranged.value.edges);
  return ok({
    mesh: result,
    nodeOf: arranged.value.nodeOf,
    smallestAngle: smallestAngleOf(result),
    inserted: mesh.nodes - arranged.value.points.length,
    converged,
  });
};
