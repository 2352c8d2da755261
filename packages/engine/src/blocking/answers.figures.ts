import { MAT, PINS_ONLY, sweaterBack } from './check/pieces.ts';
import { randomQuestion } from './check/random-question.ts';
import { HAND_PULL } from './hand-pull.ts';
import { planBlock } from './plan.ts';
import type { StretchUse } from './types.ts';

/** Bisection in the solver ends within this of the limit, as a share. */
const ROUNDING = 1e-9;
/** Nodes that are asked for; a mesh has about half of them. */
const ASKED = [300, 800, 2000, 5000] as const;

interface Tally {
  plans: number;
  faults: number;
  unsettled: number;
  pullN: number;
  seconds: number;
}

const tallied = (many: number): Tally => {
  const tally: Tally = { plans: 0, faults: 0, unsettled: 0, pullN: 0, seconds: 0 };
  for (let seed = 0; seed < many; seed++) {
    const question = randomQuestion(seed);
    const began = performance.now();
    const made = planBlock(question);
    tally.seconds = Math.max(tally.seconds, (performance.now() - began) / 1000);
    if (!made.ok) {
      tally.faults += 1;
      continue;
    }
    tally.plans += 1;
    for (const { converged, pins } of made.value.pieces) {
      if (!converged) tally.unsettled += 1;
      tally.pullN = Math.max(tally.pullN, ...pins.map(({ pullN }) => pullN));
    }
  }
  return tally;
};

/** How far one back is stretched where it is stretched most, planned anew on each of the meshes. */
const stretches = (): StretchUse[] =>
  ASKED.map((nodes) => {
    const made = planBlock(
      { pieces: [sweaterBack()], stock: PINS_ONLY, mat: MAT, gentle: false },
      { nodes },
    );
    if (!made.ok) throw new Error(made.faults.map(({ problem }) => problem).join('; '));
    return made.value.pieces[0]!.stretchUse;
  });

/** Of numbers that ought to be one: how far the farthest is from their mean, %. */
const apart = (values: readonly number[]): number => {
  const mean = values.reduce((sum, each) => sum + each / values.length, 0);
  return 100 * Math.max(...values.map((each) => Math.abs(each / mean - 1)));
};

/** Plans of random outlines, and how far one back is stretched on finer meshes. */
export async function* figures(full: boolean) {
  const many = full ? 300 : 40;
  const { plans, faults, unsettled, pullN, seconds } = tallied(many);
  const of = `${many} random outlines: ${plans} plans of which ${unsettled} say that they did not converge, ${faults} faults`;
  yield {
    name: `largest pull of one pin, ${of}`,
    value: pullN,
    unit: 'N',
    goal: { most: HAND_PULL.n * (1 + ROUNDING) },
  };
  yield { name: `longest time of a plan, ${of}`, value: seconds, unit: 's', goal: { most: 5 } };
  const each = stretches();
  const meshes = each.map(({ field }) => field.points.length / 2).join(', ');
  for (const [what, of] of [
    ['a share of what the fabric can do', (use: StretchUse) => use.max],
    ['over the wet size', (use: StretchUse) => use.overWet],
  ] as const)
    yield {
      name: `largest stretch of one back, ${what}, planned on ${meshes} nodes: farthest from its mean`,
      value: apart(each.map(of)),
      unit: '%',
      goal: { most: 5 },
    };
}
