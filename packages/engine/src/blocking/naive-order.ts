import type { Constraints } from '../membrane/index.ts';
import { ROUGH, solveWith } from './lie.ts';
import { MOVED } from './order.ts';
import { placeIn } from './piece-sheet.ts';
import type { Rehearsal } from './rehearsal.ts';

type Stage = 'hem' | 'top' | 'side';

/** Share of the height that counts as hem. */
const HEM = 0.03;

/** Which way the edge faces at a held node decides when a knitter without a plan comes to it. */
const stageOf = ({ sheet, targets }: Rehearsal, k: number, low: number, height: number): Stage => {
  const { ring } = sheet;
  if (targets[k]!.y <= low + HEM * height) return 'hem';
  const [a, b] = [ring.at(k - 1)!.wanted, ring[(k + 1) % ring.length]!.wanted];
  const [nx, ny] = [b.y - a.y, a.x - b.x];
  return ny > Math.abs(nx) ? 'top' : 'side';
};

export interface Naive {
  readonly moved: number;
  readonly iterations: number;
}

/**
 * The same pins put in without a plan: the hem where it belongs, then the top drawn up to its height
 * wherever it then lies across, then the sides drawn out to their width wherever they then lie along.
 * Counts the pins whose place so found is not their final one: those that have to be pinned again.
 */
export const naiveOrder = (rehearsal: Rehearsal): Naive => {
  const { sheet, targets } = rehearsal;
  const { solver, ring } = sheet;
  const held = rehearsal.held;
  const ys = held.map((k) => targets[k]!.y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const stages = new Map(held.map((k) => [k, stageOf(rehearsal, k, low, high - low)]));
  const of = (stage: Stage) => held.filter((k) => stages.get(k) === stage);
  const pins = (list: readonly number[], at: (k: number) => { x: number; y: number }) =>
    list.map((k) => ({ node: ring[k]!.node, x: at(k).x, y: at(k).y }));
  const slide = (k: number, dx: number, dy: number) => {
    const { x, y } = targets[k]!;
    return { node: ring[k]!.node, ax: x, ay: y, bx: x + dx, by: y + dy };
  };
  const target = (k: number) => targets[k]!;
  let iterations = 0;
  const lie = (constraints: Constraints) => {
    const eq = solveWith(sheet, constraints, ROUGH);
    iterations += eq.iterations;
    return (k: number) => placeIn(eq.points, ring[k]!.node);
  };
  solver.reset();
  const hem = pins(of('hem'), target);
  const top = lie({ held: [], pins: hem, slides: of('top').map((k) => slide(k, 1, 0)) });
  const tops = new Map(of('top').map((k) => [k, top(k)]));
  const side = lie({
    held: [],
    pins: [...hem, ...pins(of('top'), (k) => tops.get(k)!)],
    slides: of('side').map((k) => slide(k, 0, 1)),
  });
  const moved =
    of('top').filter((k) => Math.abs(tops.get(k)!.x - target(k).x) > MOVED).length +
    of('side').filter((k) => Math.abs(side(k).y - target(k).y) > MOVED).length;
  return { moved, iterations };
};
