import Delaunator from 'delaunator';
import { BACK, question } from './check/pieces.ts';
import { triangulate } from './triangulate.ts';

const ROUNDS = 40;
const WARM = 10;

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const pinsAround = (count: number) =>
  Array.from({ length: count }, (_, k) => {
    const at = ((k + 0.5) * BACK.length) / count;
    const [a, b] = [BACK[Math.floor(at)]!, BACK[(Math.floor(at) + 1) % BACK.length]!];
    const share = at - Math.floor(at);
    return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] as const;
  });

/** A garment's back with 60 pins, against a plain triangulation of the nodes that came out. */
const measure = (name: string, size: number) => {
  const q = question(BACK, { size, nodes: pinsAround(60), maxPoints: 30_000 });
  const result = triangulate(q);
  if (!result.ok || !result.value.converged) throw new Error('the back was not meshed');
  const { points, triangles } = result.value.mesh;
  const ours: number[] = [];
  const plain: number[] = [];
  for (let k = 0; k < ROUNDS; k++) {
    const whole = timed(() => triangulate(q));
    const base = timed(() => new Delaunator(points));
    if (k < WARM) continue;
    ours.push(whole);
    plain.push(base);
  }
  const ms = median(ours);
  return {
    name,
    ms,
    ratio: ms / median(plain),
    against: 'a plain Delaunay triangulation of the same nodes, without edges or refinement',
    nodes: points.length / 2,
    triangles: triangles.length / 3,
  };
};

export const bench = async () => [measure('mesh-2000', 13.6), measure('mesh-20000', 4.1)];
