import { MAT, PINS_ONLY, sweaterBack } from './check/pieces.ts';
import { solveWith } from './lie.ts';
import { openSheet } from './piece-sheet.ts';
import { planBlock } from './plan.ts';
import type { BlockQuestion } from './types.ts';

/** The mesh that the plan is made on. */
const NODES = 1200;
const ROUNDS = 5;

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** Mesh and equilibrium of the same back with its wanted corners held, from rest. */
const coldSolve = (): void => {
  const opened = openSheet(sweaterBack(), NODES);
  if (!opened.ok) throw new Error('no mesh');
  const corners = opened.value.ring.filter(({ role }) => role === 'corner');
  const pins = corners.map(({ node, wanted }) => ({ node, x: wanted.x, y: wanted.y }));
  const { converged } = solveWith(opened.value, { held: [], pins, slides: [] });
  if (!converged) throw new Error('the cold solve did not settle');
};

/** A whole plan of a sweater back: pins, order, ranges, gentler variants. */
export const bench = async () => {
  const question: BlockQuestion = {
    pieces: [sweaterBack()],
    stock: PINS_ONLY,
    mat: MAT,
    gentle: false,
  };
  const whole: number[] = [];
  const cold: number[] = [];
  for (let k = -1; k < ROUNDS; k++) {
    const plan = timed(() => planBlock(question, { nodes: NODES }));
    const solve = timed(coldSolve);
    if (k < 0) continue;
    whole.push(plan);
    cold.push(solve);
  }
  const ms = median(whole);
  const opened = openSheet(sweaterBack(), NODES);
  const nodes = opened.ok ? opened.value.mesh.points.length / 2 : 0;
  return [
    {
      name: 'pin-plan-full',
      ms,
      ratio: ms / median(cold),
      against: `one cold solve of the same sweater back (${nodes} nodes), mesh included, in the same run`,
    },
  ];
};
