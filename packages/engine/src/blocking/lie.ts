import type { Constraints, Equilibrium, MembraneSolver, Mesh } from '../membrane/index.ts';
import type { Effort } from './effort.ts';

/** A mesh at rest with a solver of its own. */
export interface Lying {
  readonly mesh: Mesh;
  readonly solver: MembraneSolver;
  /** What is spent and may be spent on the plan of which this is part. */
  readonly effort: Effort;
}

/**
 * Forces out of balance by less than this, N, are at rest: a twentieth of a gram moves no stitch. After so
 * many iterations slack fabric, which may lie in many ways, is taken as it lies.
 */
export const AT_REST = { residual: 5e-4, after: 12 } as const;
/** Iterations after which no better answer comes. */
const MOST = 150;
/** A pin that pushes harder than this lets go, N. */
const PUSHES = 5e-3;
const MOST_RELEASES = 4;

/**
 * How the piece lies with these constraints, from how it lay before. A piece held at fewer than two
 * places lies at rest, moved along with the one, and nothing is solved. A pin that pushes, or that would fold
 * the fabric over, is let go; `mayFold` keeps the latter, as on a way that leads through it. Slack fabric need not come to
 * rest to the last digit; `converged` says that no force above AT_REST is left. Ends after about MOST
 * iterations in each of a few passes, or where the effort of the plan is spent: then it lies as far on the
 * way as it came to rest.
 */
export const solveWith = (lying: Lying, constraints: Constraints, mayFold = false): Equilibrium => {
  let kept = constraints.pins.map((_, k) => k);
  for (let pass = 0; ; pass++) {
    const now = { ...constraints, pins: kept.map((k) => constraints.pins[k]!) };
    const eq = inFull(solveKept(lying, now), kept, constraints);
    if (pass >= MOST_RELEASES || spent(lying)) return eq;
    const goes = new Set([
      ...pushes(lying.mesh, constraints, eq, kept),
      ...(mayFold ? [] : folds(lying.mesh, constraints, eq, kept)),
    ]);
    if (goes.size === 0) return eq;
    kept = kept.filter((k) => !goes.has(k));
    // What has turned over does not turn back by itself.
    if (!mayFold && eq.turned > 0) lying.solver.reset();
  }
};

const spent = ({ effort }: Lying): boolean => !effort.goOn();

const solveKept = ({ mesh, solver, effort }: Lying, constraints: Constraints): Equilibrium => {
  const { pins, slides } = constraints;
  if (pins.length + slides.length < 2) return atRest(mesh, pins[0], slides.length);
  const set = solver.constrain(constraints);
  if (!set.ok) throw new Error(set.faults.map((f) => f.problem).join('; '));
  const [before, nodes] = [solver.evaluations, mesh.points.length / 2];
  const eq = solver.solve(
    ({ iterations }) => iterations < MOST && effort.goOn(solver.evaluations - before, nodes),
  );
  effort.spend(solver.evaluations - before, nodes);
  return eq;
};

/** Reactions, releases and what gave way, by the indices of all pins. */
const inFull = (
  eq: Equilibrium,
  kept: readonly number[],
  { pins, slides }: Constraints,
): Equilibrium => {
  if (kept.length === pins.length) return eq;
  const reactions = new Float64Array(2 * (pins.length + slides.length));
  kept.forEach((k, i) => {
    reactions.set(eq.reactions.subarray(2 * i, 2 * i + 2), 2 * k);
  });
  reactions.set(eq.reactions.subarray(2 * kept.length), 2 * pins.length);
  const held = new Set(kept);
  const released = [
    ...eq.released.map((i) => kept[i]!),
    ...pins.flatMap((_, k) => (held.has(k) ? [] : [k])),
  ];
  const gaveWay = eq.gaveWay.map((each) =>
    each.kind === 'pin' ? { ...each, index: kept[each.index]! } : each,
  );
  return { ...eq, reactions, released, gaveWay };
};

/** Pins on the outline that push the fabric towards its inside, of those that are held. */
const pushes = (
  mesh: Mesh,
  { pins }: Constraints,
  eq: Equilibrium,
  kept: readonly number[],
): number[] => {
  if (kept.every((k) => Math.hypot(eq.reactions[2 * k]!, eq.reactions[2 * k + 1]!) <= PUSHES))
    return [];
  const normals = outwardOf(mesh);
  const released = new Set(eq.released);
  return kept.filter((k) => {
    const node = pins[k]!.node;
    const [nx, ny] = [normals[2 * node]!, normals[2 * node + 1]!];
    const size = Math.hypot(nx, ny);
    const pull = (eq.reactions[2 * k]! * nx + eq.reactions[2 * k + 1]! * ny) / (size || 1);
    return !released.has(k) && size > 0 && pull < -PUSHES;
  });
};

/** Pins that fold the fabric over: each holds a corner of a triangle that lies face down. */
const folds = (
  { triangles }: Mesh,
  { pins }: Constraints,
  { points, turned }: Equilibrium,
  kept: readonly number[],
): number[] => {
  if (turned === 0) return [];
  const corners = new Set<number>();
  for (let e = 0; e < triangles.length; e += 3) {
    const [a, b, c] = [triangles[e]!, triangles[e + 1]!, triangles[e + 2]!];
    const [ax, ay] = [points[2 * a]!, points[2 * a + 1]!];
    const [ux, uy] = [points[2 * b]! - ax, points[2 * b + 1]! - ay];
    const [vx, vy] = [points[2 * c]! - ax, points[2 * c + 1]! - ay];
    if (ux * vy - uy * vx < 0) for (const node of [a, b, c]) corners.add(node);
  }
  return kept.filter((k) => corners.has(pins[k]!.node));
};

const known = new WeakMap<Mesh, Float64Array>();

/** Sum of the outward normals of the edges of the outline at each node; the piece lies left of an edge. */
const outwardOf = (mesh: Mesh): Float64Array => {
  const old = known.get(mesh);
  if (old !== undefined) return old;
  const { points, edges } = mesh;
  const normals = new Float64Array(points.length);
  for (let k = 0; k < edges.length; k += 2) {
    const [a, b] = [edges[k]!, edges[k + 1]!];
    const [dx, dy] = [points[2 * b]! - points[2 * a]!, points[2 * b + 1]! - points[2 * a + 1]!];
    for (const node of [a, b]) {
      normals[2 * node]! += dy;
      normals[2 * node + 1]! -= dx;
    }
  }
  known.set(mesh, normals);
  return normals;
};

const atRest = (
  mesh: Mesh,
  pin: Constraints['pins'][number] | undefined,
  slides: number,
): Equilibrium => {
  const at = pin?.node ?? 0;
  const [dx, dy] =
    pin === undefined ? [0, 0] : [pin.x - mesh.points[2 * at]!, pin.y - mesh.points[2 * at + 1]!];
  const count = mesh.triangles.length / 3;
  return {
    points: mesh.points.map((v, k) => v + (k % 2 === 0 ? dx : dy)),
    reactions: new Float64Array((pin === undefined ? 0 : 2) + 2 * slides),
    stretch: Float64Array.from({ length: 3 * count }, (_, k) => (k % 3 === 2 ? 0 : 1)),
    stress: new Float64Array(3 * count),
    use: new Float64Array(2 * count),
    branch: new Uint8Array(count),
    released: [],
    energy: 0,
    iterations: 0,
    residual: 0,
    turned: 0,
    converged: true,
    stopped: false,
    gaveWay: [],
  };
};
