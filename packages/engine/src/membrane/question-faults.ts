import type { Fault } from '../units/index.ts';
import { materialFaults } from './material.ts';
import type { Constraints, MembraneQuestion } from './question.ts';

const fault = (field: string, given: unknown, problem: string, mend: string): Fault => ({
  code: 'membrane-question',
  field,
  given: String(given),
  problem,
  mend,
});

/** Nodes that do not exist, stand twice or go to no place, and lines without a direction. */
export const constraintFaults = (constraints: Constraints, nodes: number): Fault[] => {
  const faults: Fault[] = [];
  const seen = new Set<number>();
  for (const kind of ['held', 'pins', 'slides'] as const)
    constraints[kind].forEach((one, k) => {
      const field = `${kind}[${k}]`;
      const numbers = Object.values(one).flat() as number[];
      if (!numbers.every(Number.isFinite))
        faults.push(
          fault(field, JSON.stringify(one), 'A number is missing', 'Give finite numbers'),
        );
      if (!(Number.isInteger(one.node) && one.node >= 0 && one.node < nodes))
        faults.push(
          fault(`${field}.node`, one.node, 'There is no such node', `Give 0 to ${nodes - 1}`),
        );
      else if (seen.has(one.node))
        faults.push(
          fault(`${field}.node`, one.node, 'The node is constrained twice', 'Constrain it once'),
        );
      seen.add(one.node);
      const { most } = one as { readonly most?: number };
      if (most !== undefined && !(most > 0))
        faults.push(
          fault(`${field}.most`, most, 'It bears nothing', 'Give a force above 0 N, or none'),
        );
    });
  constraints.slides.forEach((slide, k) => {
    if (slide.ax === slide.bx && slide.ay === slide.by)
      faults.push(fault(`slides[${k}]`, slide.ax, 'A line needs two places', 'Give a and b apart'));
  });
  constraints.pins.forEach(({ outward }, k) => {
    if (outward !== undefined && Math.hypot(...outward) === 0)
      faults.push(
        fault(`pins[${k}].outward`, outward, 'A pin pulls no way', 'Give a direction or none'),
      );
  });
  return faults;
};

const cordFaults = ({ cords, mesh }: MembraneQuestion): Fault[] =>
  cords.flatMap(({ edge, law }, k) => {
    const edges = mesh.edges.length / 2;
    if (!(Number.isInteger(edge) && edge >= 0 && edge < edges))
      return [fault(`cords[${k}].edge`, edge, 'There is no such edge', `Give 0 to ${edges - 1}`)];
    if (law.limit > 0 && law.stiffness(0) > 0) return [];
    const mend = 'Give a limit and a stiffness above 0';
    return [fault(`cords[${k}].law`, law.limit, 'A line has no tension', mend)];
  });

const numberFaults = ({ friction = 0, mostUse = 0.5, start }: MembraneQuestion): Fault[] => [
  ...(friction >= 0 && Number.isFinite(friction)
    ? []
    : [fault('friction', friction, 'Friction is not 0 or more', 'Give N/mm² from 0')]),
  ...(mostUse > 0 && mostUse < 1
    ? []
    : [fault('mostUse', mostUse, 'A share is not between 0 and 1', 'Give a share below 1')]),
  ...(start === undefined || start.every(Number.isFinite)
    ? []
    : [fault('start', 'not finite', 'A place to start from is missing', 'Give finite numbers')]),
];

const degenerate = ({ mesh }: MembraneQuestion): Fault[] => {
  const { points, triangles } = mesh;
  for (let e = 0; e < triangles.length; e += 3) {
    const [a, b, c] = [2 * triangles[e]!, 2 * triangles[e + 1]!, 2 * triangles[e + 2]!];
    const [ux, uy] = [points[b]! - points[a]!, points[b + 1]! - points[a + 1]!];
    const [vx, vy] = [points[c]! - points[a]!, points[c + 1]! - points[a + 1]!];
    if (!(ux * vy - uy * vx > 0))
      return [
        fault(
          `mesh.triangles[${e / 3}]`,
          ux * vy - uy * vx,
          'A triangle has no area or turns clockwise',
          'Mesh the outline afresh',
        ),
      ];
  }
  return triangles.length > 0
    ? []
    : [fault('mesh', 0, 'There is no triangle', 'Give a piece with an area')];
};

/** Arrays of another length than the mesh asks for are a bug of the caller and throw. */
const checkLengths = (q: MembraneQuestion): void => {
  const count = q.mesh.triangles.length / 3;
  const wanted = [
    ['directions', q.directions.length, count],
    ['materialOf', q.materialOf.length, count],
    ['start', q.start?.length ?? q.mesh.points.length, q.mesh.points.length],
  ] as const;
  for (const [name, length, right] of wanted)
    if (length !== right) throw new RangeError(`membrane: ${name} has ${length}, not ${right}`);
  if (q.materialOf.some((m) => m >= q.materials.length))
    throw new RangeError('membrane: a triangle names a material that is not given');
};

/** Everything that keeps a question from being solved; empty where it can be. */
export const questionFaults = (q: MembraneQuestion): Fault[] => {
  checkLengths(q);
  return [
    ...q.materials.flatMap((material, k) => materialFaults(material, `materials[${k}]`)),
    ...degenerate(q),
    ...cordFaults(q),
    ...numberFaults(q),
    ...constraintFaults(q, q.mesh.points.length / 2),
  ];
};
