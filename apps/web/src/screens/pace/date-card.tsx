import { type DateAdvice, restCaution } from '@dryflat/engine/routes';
import { Card, Notice } from '../../kit/index.ts';
import { printDay } from '../result/today.ts';
import { printDuration } from './parse-duration.ts';
import { weekdays } from './weekdays.ts';

/** What the wanted day asks for: a start, or hours; nothing where it has gone by. */
export const DateCard = ({ date, from }: { date: DateAdvice | null; from: string }) => {
  if (date === null || date.by < from) return null;
  return (
    <Card title={`What ${printDay(date.by)} asks for`}>
      <p className="df-soft">So that it is done by then 9 times in 10:</p>
      <ul className="pc-asks">
        <li>{startWords(date)}</li>
        <li>{hoursWords(date)}</li>
      </ul>
      {date.hours && <WeekOf hours={date.hours} />}
      <Rest hours={date.hours ?? []} />
    </Card>
  );
};

const startWords = ({ latestStart }: DateAdvice): string =>
  latestStart === null
    ? 'With the hours that you have, no start is early enough any more.'
    : `With the hours that you have, begin by ${printDay(latestStart)} at the latest.`;

const hoursWords = ({ hoursPerWeek }: DateAdvice): string =>
  hoursPerWeek === null
    ? 'From the first day on, not even 12 hours a day are enough.'
    : `From the first day on, knit ${printDuration(60 * hoursPerWeek)} a week, spread like this:`;

const WeekOf = ({ hours }: { hours: readonly number[] }) => (
  <dl className="pc-hours">
    {weekdays('short').map((name, day) => (
      <div key={name}>
        <dt>{name}</dt>
        <dd>{(hours[day] ?? 0) > 0 ? printDuration(60 * (hours[day] ?? 0)) : '–'}</dd>
      </div>
    ))}
  </dl>
);

const Rest = ({ hours }: { hours: readonly number[] }) => {
  const caution = restCaution(hours);
  return caution === null ? null : <Notice tone="unsure">{caution}</Notice>;
};
