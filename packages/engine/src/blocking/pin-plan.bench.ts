import { MAT, PINS_ONLY, sweaterBack } from './check/pieces.ts';
import { solveWith } from './lie.ts';
import { openSheet } from './piece-sheet.ts';
import { planBlock } from './plan.ts';
import type { BlockQuestion } from './types.ts';

/** Nodes asked for: the usual fineness of a drawing, and so many that the mesh has about 2,000. */
const SIZES = [
  { name: 'pin-plan-full', nodes: 1200, rounds: 5 },
  { name: 'pin-plan-2000', nodes: 4100, rounds: 3 },
] as const;

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** Mesh and equilibrium of the same back with its wanted corners held, from rest. */
const coldSolve = (nodes: number): void => {
  const opened = openSheet(sweaterBack(), nodes);
  if (!opened.ok) throw new Error('no mesh');
  const corners = opened.value.ring.filter(({ role }) => role === 'corner');
  const pins = corners.map(({ node, wanted }) => ({ node, x: wanted.x, y: wanted.y }));
  const { converged } = solveWith(opened.value, { held: [], pins, slides: [] });
  if (!converged) throw new Error('the cold solve did not settle');
};

const planWhole = (nodes: number): void => {
  const question: BlockQuestion = {
    pieces: [sweaterBack()],
    stock: PINS_ONLY,
    mat: MAT,
    gentle: false,
  };
  const made = planBlock(question, { nodes });
  if (!made.ok || !made.value.pieces[0]!.converged) throw new Error('no plan that settled');
};

const nodesOf = (about: number): number => {
  const opened = openSheet(sweaterBack(), about);
  return opened.ok ? opened.value.mesh.points.length / 2 : 0;
};

/** Most that the process has held at once so far, MB. */
const peakMb = (): number => Math.round(process.resourceUsage().maxRSS / 1024);

/** Whole plans of a sweater back: pins, order, ranges, gentler variants. */
export const bench = async () =>
  SIZES.map(({ name, nodes, rounds }) => {
    const whole: number[] = [];
    const cold: number[] = [];
    for (let k = -1; k < rounds; k++) {
      const plan = timed(() => planWhole(nodes));
      const solve = timed(() => coldSolve(nodes));
      if (k < 0) continue;
      whole.push(plan);
      cold.push(solve);
    }
    const ms = median(whole);
    return {
      name,
      ms,
      ratio: ms / median(cold),
      against: `one cold solve of the same sweater back (${nodesOf(nodes)} nodes), mesh included, in the same run`,
      memoryMb: peakMb(),
    };
  });
