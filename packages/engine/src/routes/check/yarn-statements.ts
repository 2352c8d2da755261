import type { PaceForecast } from '../pace/index.ts';
import type { SkeinPlan } from '../skein-plan.ts';
import type { Route } from '../types.ts';

/** Everything that is said of the yarn of one garment, on the same seed and draws. */
export interface SaidOfYarn {
  readonly plan: SkeinPlan;
  readonly planned: Route;
  readonly pace: PaceForecast;
}

/** More yarn is advised from this chance of running out on. */
const SHORT = 0.05;

/** Sums of the same columns in another order. */
const ROUNDING = 1e-9;
const differ = (a: number, b: number): boolean =>
  Math.abs(a - b) > ROUNDING * Math.max(1, Math.abs(a));

/** What is said of yarn in one place and contradicted in another; a line each. */
export const contradictedYarn = ({ plan, planned, pace }: SaidOfYarn): string[] => {
  const { chanceShort, buy, leftoverM, lots, needed, held, sentence } = plan;
  const lines: string[] = [];
  const wrong = (is: boolean, line: string): void => {
    if (is) lines.push(line);
  };
  wrong(buy !== null && (buy === 0) !== chanceShort < SHORT, `buy ${buy} at ${chanceShort}`);
  wrong(
    lots.kind === 'one' && (chanceShort >= SHORT || (buy ?? 0) > 0),
    `“${lots.sentence}” beside “${sentence}”`,
  );
  wrong(
    leftoverM.p95 < 0 && (buy === 0 || lots.kind === 'one' || lots.kind === 'by-part'),
    `${leftoverM.p95} m are missing beside “${lots.sentence}”`,
  );
  wrong(
    chanceShort < SHORT && lots.kind === 'short',
    `it runs out with ${chanceShort} beside “${lots.sentence}”`,
  );
  wrong(
    planned.chanceOfYarn !== null && differ(1 - chanceShort, planned.chanceOfYarn),
    `it lasts with ${1 - chanceShort}, as a route with ${planned.chanceOfYarn}`,
  );
  wrong(
    differ(needed.metres.p50, planned.yarnM.needed.p50),
    `${needed.metres.p50} m are needed, by the route ${planned.yarnM.needed.p50}`,
  );
  wrong(
    planned.yarnM.left !== null && differ(held.metres.p50, planned.yarnM.left.p50),
    `${held.metres.p50} m are at hand, by the route ${planned.yarnM.left?.p50}`,
  );
  const said = pace.notices.some(({ code }) => code === 'yarn-short');
  wrong(
    planned.chanceOfYarn !== null && said !== chanceShort >= SHORT,
    `it runs out with ${chanceShort}, and the pace says ${said ? 'so' : 'nothing'}`,
  );
  if (pace.yarn !== null) {
    wrong(
      differ(pace.yarn.chanceShort, chanceShort),
      `it runs out with ${chanceShort}, by the pace ${pace.yarn.chanceShort}`,
    );
    wrong(
      pace.yarn.lastOrderDay !== null && buy === 0,
      `ask for more by ${pace.yarn.lastOrderDay}, and none is to be bought`,
    );
  }
  return lines;
};
