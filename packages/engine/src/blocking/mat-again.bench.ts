import { inAsPlanned } from './check/mat.ts';
import { MAT, PINS_ONLY, sweaterBack } from './check/pieces.ts';
import { learnOnMat } from './learn-on-mat.ts';
import type { MatReading } from './mat-types.ts';
import { planBlock } from './plan.ts';
import { replan } from './replan.ts';
import { stockWithout } from './stock-left.ts';
import type { PiecePlan } from './types.ts';

const ROUNDS = 5;
/** Steps that are in, and those at which two dimensions were read. */
const IN = 12;
const READ_AT = [6, 9, 12];

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const timed = <T>(work: () => T): { ms: number; value: T } => {
  const start = performance.now();
  const value = work();
  return { ms: performance.now() - start, value };
};

const planWhole = (): PiecePlan => {
  const made = planBlock({
    pieces: [sweaterBack()],
    stock: PINS_ONLY,
    mat: MAT,
    gentle: false,
  });
  if (!made.ok) throw new Error('no plan');
  return made.value.pieces[0]!;
};

/** A back that is 2 % wider than was thought, by its hem and its length. */
const READINGS = READ_AT.map(
  (afterStep): MatReading => ({
    afterStep,
    felt: 'right',
    measured: [
      { landmark: 'hem', mm: 484 },
      { landmark: 'body-length', mm: 559 },
    ],
  }),
);

const learnAgain = (plan: PiecePlan) => {
  const made = learnOnMat(sweaterBack(), inAsPlanned(plan.pins.slice(0, IN)), READINGS);
  if (!made.ok || !made.value.fit.converged) throw new Error('nothing was learned');
  return made.value.piece;
};

const planRest = (plan: PiecePlan, piece: ReturnType<typeof sweaterBack>) => {
  const done = plan.pins.slice(0, IN);
  const made = replan(piece, inAsPlanned(done), stockWithout(PINS_ONLY, done), {
    mat: MAT,
    gentle: false,
    before: { pins: plan.pins.slice(IN), measurements: plan.measurements },
  });
  if (!made.ok || !made.value.plan.converged) throw new Error('no rest of a plan');
};

/** Learning from three readings, and planning the rest, after twelve steps of a sweater back. */
export const bench = async () => {
  const [whole, learn, rest]: [number[], number[], number[]] = [[], [], []];
  for (let k = -1; k < ROUNDS; k++) {
    const plan = timed(planWhole);
    const learned = timed(() => learnAgain(plan.value));
    const again = timed(() => planRest(plan.value, learned.value));
    if (k < 0) continue;
    whole.push(plan.ms);
    learn.push(learned.ms);
    rest.push(again.ms);
  }
  const against = 'a whole plan of the same sweater back, in the same run';
  return [
    { name: 'mat-learn', ms: median(learn), ratio: median(learn) / median(whole), against },
    { name: 'mat-replan', ms: median(rest), ratio: median(rest) / median(whole), against },
  ];
};
