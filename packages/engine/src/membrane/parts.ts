import { between, type CordLines } from './cords.ts';
import type { Friction } from './friction.ts';
import { nodeAreas, type RestTriangles, restTriangles } from './geometry.ts';
import { stiffnessScale } from './material.ts';
import type { MembraneQuestion } from './question.ts';
import { relaxation } from './relaxation.ts';
import { analyse, elementMap, patternFromTriangles, type SparsePattern } from './sparse/index.ts';
import type { Parts } from './system.ts';

/** Sheet, cords, mat and the analysis of their common stiffness, from a question without faults. */
export const partsOf = (q: MembraneQuestion): Parts => {
  const nodes = q.mesh.points.length / 2;
  const { pattern, map } = patternFromTriangles(q.mesh.triangles, nodes, 2);
  const rest = restTriangles(q.mesh, q.directions);
  return {
    sheet: {
      triangles: q.mesh.triangles,
      rest,
      materialOf: q.materialOf,
      relaxations: q.materials.map((material) => relaxation(material)),
      map,
    },
    cords: cordLines(q, pattern),
    friction: frictionOf(q, rest),
    nodes: elementMap(
      pattern,
      Uint32Array.from({ length: nodes }, (_, i) => i),
      1,
      2,
    ),
    symbolic: analyse(pattern, 2),
  };
};

const cordLines = ({ cords, mesh }: MembraneQuestion, pattern: SparsePattern): CordLines => {
  const nodes = Uint32Array.from(
    cords.flatMap(({ edge }) => [mesh.edges[2 * edge]!, mesh.edges[2 * edge + 1]!]),
  );
  return {
    nodes,
    laws: cords.map(({ law }) => law),
    length: Float64Array.from(cords, (_, k) =>
      Math.hypot(...between(mesh.points, nodes[2 * k]!, nodes[2 * k + 1]!)),
    ),
    map: elementMap(pattern, nodes, 2, 2),
  };
};

const frictionOf = (
  { mesh, friction = 0, start }: MembraneQuestion,
  rest: RestTriangles,
): Friction | undefined => {
  if (friction === 0) return undefined;
  return {
    most: nodeAreas(mesh, rest).map((area) => friction * area),
    laid: (start ?? mesh.points).slice(),
  };
};

/** Force (N) that strains a typical triangle by 1: what residuals are measured against. */
export const unitForce = ({ sheet }: Parts): number => {
  const { area } = sheet.rest;
  const edge = Math.sqrt((2 * area.reduce((sum, a) => sum + a, 0)) / area.length);
  const stiffness = sheet.relaxations.map(({ material }) => stiffnessScale(material));
  return edge * Math.max(...stiffness);
};
