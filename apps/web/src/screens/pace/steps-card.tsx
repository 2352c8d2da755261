import type { CriticalStep, Milestone, PaceForecast } from '@dryflat/engine/routes';
import { Card, Disclosure } from '../../kit/index.ts';
import { BasisList } from '../result/basis-list.tsx';
import { chancePercent } from '../result/chance-words.ts';
import { hoursRange } from '../result/hours-words.ts';
import { printDay } from '../result/today.ts';
import { daysWords } from './days-words.ts';

/** When each step ends, and which of them the days go to. */
export const StepsCard = ({ forecast }: { forecast: PaceForecast }) => (
  <Card title="Step by step">
    <ol className="pc-steps" aria-label="When each step ends">
      {forecast.milestones.map((each) => (
        <Step key={each.id} milestone={each} forecast={forecast} />
      ))}
    </ol>
    <Critical steps={forecast.critical} />
    <Disclosure title="What it stands on">
      <BasisList bases={forecast.bases} ids={forecast.bases.map(({ id }) => id)} />
    </Disclosure>
  </Card>
);

const LATER = 'after three years';

const Step = ({ milestone, forecast }: { milestone: Milestone; forecast: PaceForecast }) => {
  const { id, name, early, middle, late } = milestone;
  const part = /^part:(\d+)$/.exec(id)?.[1];
  const hours = part === undefined ? undefined : forecast.byPart[Number(part)]?.hours;
  return (
    <li data-last={id === 'done' || undefined}>
      <strong>{name.slice(0, 1).toUpperCase() + name.slice(1)}</strong>
      <span>{middle === null ? LATER : printDay(middle)}</span>
      <span className="df-soft">
        {early !== null &&
          early !== late &&
          `${printDay(early)} to ${late === null ? LATER : printDay(late)}`}
        {hours && `${early !== null && early !== late ? '; ' : ''}${hoursRange(hours)}`}
      </span>
    </li>
  );
};

const Critical = ({ steps }: { steps: readonly CriticalStep[] }) => {
  const [first, ...others] = steps.filter(({ daysGained }) => daysGained >= 0.05);
  if (first === undefined) return null;
  return (
    <>
      <h3>Where the days go</h3>
      <p>
        Most go to <strong>{first.name}</strong>: {gainOf(first)}.
      </p>
      {others.length > 0 && (
        <ul className="pc-asks">
          {others.map((each) => (
            <li key={each.id}>
              {each.name}: {gainOf(each)}
            </li>
          ))}
        </ul>
      )}
    </>
  );
};

const gainOf = ({ daysGained, chanceWithout }: CriticalStep): string =>
  `${daysWords(daysGained)}${
    chanceWithout === null ? '' : `; without it, ${chancePercent(chanceWithout)} in time`
  }`;
