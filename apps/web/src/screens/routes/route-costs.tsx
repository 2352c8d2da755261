import type { Route } from '@dryflat/engine/routes';
import { useView } from '../../store/index.ts';
import { chancePercent } from '../result/chance-words.ts';
import { hoursRange } from '../result/hours-words.ts';
import { printDay } from '../result/today.ts';
import { yarnRange } from './yarn-words.ts';

type Line = readonly [name: string, value: string];

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Counts that it names, hours, days and yarn; what is nothing is left out. */
export const RouteCosts = ({ route }: { route: Route }) => {
  const { units } = useView();
  const lines = [...countLines(route), ...timeLines(route), ...yarnLines(route, units)];
  return (
    <>
      <h3>What it takes</h3>
      <dl className="ro-costs">
        {lines
          .filter(([, value]) => value !== 'none')
          .map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
    </>
  );
};

const countLines = ({ counts }: Route): Line[] =>
  counts.map(({ what, count }) => [capital(what), `${count}`]);

const timeLines = ({ hours, doneDay, chanceByDate }: Route): Line[] => [
  ['Knitting', hoursRange(hours.knit)],
  ['Ripping', hoursRange(hours.rip)],
  ['Sewing up', hoursRange(hours.sew)],
  ['At the mat', hoursRange(hours.block)],
  ['Drying, by the clock', hoursRange(hours.dry)],
  ...(doneDay.p50 === null ? [] : [['Done as likely as not by', printDay(doneDay.p50)] as const]),
  ...(doneDay.p95 === null ? [] : [['At the latest by', printDay(doneDay.p95)] as const]),
  ...(chanceByDate === null ? [] : [['In time', chancePercent(chanceByDate)] as const]),
];

const yarnLines = ({ yarnM, chanceOfYarn }: Route, units: 'cm' | 'in'): Line[] => [
  ['Yarn still needed', yarnRange(yarnM.needed, units)],
  ...(yarnM.returned.p95 > 0
    ? [['Comes back from ripping', yarnRange(yarnM.returned, units)] as const]
    : []),
  ...(yarnM.left === null ? [] : [['Yarn at hand', yarnRange(yarnM.left, units)] as const]),
  ...(chanceOfYarn === null ? [] : [['The yarn lasts', chancePercent(chanceOfYarn)] as const]),
];
