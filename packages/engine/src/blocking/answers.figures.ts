import { MAT, PINS_ONLY, sweaterBack } from './check/pieces.ts';
import { randomQuestion } from './check/random-question.ts';
import { HAND_PULL } from './hand-pull.ts';
import { planBlock } from './plan.ts';

/** Bisection in the solver ends within this of the limit, as a share. */
const ROUNDING = 1e-9;
/** The meshes of one back, nodes. */
const MESHES = [300, 600, 1200, 2400] as const;

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

/** The largest stretch of one back on each of the meshes, over the wet size. */
const overWet = (): number[] =>
  MESHES.map((nodes) => {
    const made = planBlock(
      { pieces: [sweaterBack()], stock: PINS_ONLY, mat: MAT, gentle: false },
      { nodes },
    );
    if (!made.ok) throw new Error(made.faults.map(({ problem }) => problem).join('; '));
    return made.value.pieces[0]!.stretchUse.overWet;
  });

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
  const stretches = overWet();
  yield {
    name: `largest stretch of one back, meshes of ${MESHES.join(', ')} nodes: range over the least`,
    value: 100 * (Math.max(...stretches) / Math.min(...stretches) - 1),
    unit: '%',
    goal: { most: 5 },
  };
}
