import { PULLOVER } from '../garment/check/questions.ts';
import { forecast } from '../garment/index.ts';
import { QUESTION } from './check/questions.ts';
import { routes } from './routes.ts';

const DRAWS = 10_000;
const TWELVE = 12;
const BUDGET_MS = 1000;
const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** Every route of a pullover that is half knit, with what measuring is worth, beside its plain forecast. */
export const bench = async () => {
  const ours: number[] = [];
  const plain: number[] = [];
  const twelve: number[] = [];
  let open = 0;
  for (let seed = 0; seed < 15; seed++) {
    const whole = timed(() => {
      const found = routes(QUESTION, { draws: DRAWS, seed });
      open = found.ok ? found.value.routes.length : 0;
    });
    const one = timed(() => forecast(PULLOVER, { draws: DRAWS, seed }));
    let left = TWELVE;
    const some = timed(() => routes(QUESTION, { draws: DRAWS, seed, onRoute: () => --left > 0 }));
    if (seed < 4) continue;
    twelve.push(some);
    ours.push(whole);
    plain.push(one);
  }
  const ms = median(ours);
  return [
    {
      name: 'routes-full',
      ms,
      ratio: ms / median(plain),
      against: `a plain forecast of the same garment in the same run, ${open} routes of ${DRAWS} draws`,
    },
    {
      name: 'routes-twelve',
      ms: median(twelve),
      ratio: median(twelve) / BUDGET_MS,
      against: `a second, in which a knitter waits for ${TWELVE} routes of ${DRAWS} draws`,
    },
  ];
};
